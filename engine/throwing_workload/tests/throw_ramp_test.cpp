// Ramps counted by hand, and what must hold of any ramp: never more than the rise, never on a day left out.
#include "throwing_workload/throw_ramp.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <random>

using namespace amentum;

namespace {

Date day(int d) {
    return *parse_date("2026-05-04", "date") + d;
} // a Monday, and days after it

ThrowRampWanted wanted(int target) {
    ThrowRampWanted asked{target, day(0)};
    return asked;
}

std::vector<int> week_throws(const ThrowRamp& ramp) {
    std::vector<int> throws;
    for (const auto& week : ramp.weeks)
        throws.push_back(week.throws);
    return throws;
}

std::string refused(const ThrowRampWanted& asked) {
    const auto ramp = plan_throw_ramp(asked);
    return ramp ? "" : ramp.refusal().field;
}

} // namespace

TEST_CASE("from nothing to 120 throws a week: 18 more each week, which is 15 % of the target") {
    const auto ramp = plan_throw_ramp(wanted(120));
    REQUIRE(ramp);
    CHECK(week_throws(*ramp) == std::vector{18, 36, 54, 72, 90, 108, 120});
    CHECK(ramp->steps.size() == 21);
    CHECK(ramp->steps[0].throws == 6);
    CHECK(ramp->steps[20].throws == 40);
    CHECK(ramp->dates[0] == day(0));
    CHECK(ramp->dates[1] == day(2));
    CHECK(ramp->dates[2] == day(4));
    CHECK(ramp->dates[3] == day(7));
    CHECK(ramp->weeks[1].words ==
          "Week 2, from 2026-05-11: 36 throws in 3 sessions, 12 each; 18 more than the week before.");
}

TEST_CASE("from the last known week, with a remainder on the last sessions, and one at the target already") {
    auto asked = wanted(100);
    asked.start_throws = 60;
    const auto ramp = plan_throw_ramp(asked);
    REQUIRE(ramp);
    CHECK(week_throws(*ramp) == std::vector{75, 90, 100});
    CHECK(ramp->steps[6].throws == 33);
    CHECK(ramp->steps[8].throws == 34);
    asked.start_throws = 100;
    CHECK(week_throws(*plan_throw_ramp(asked)) == std::vector{100});
}

TEST_CASE("a day off between early sessions even when none is asked for; then as asked") {
    auto asked = wanted(200);
    asked.days_between = 0;
    asked.sessions_a_week = 6;
    const auto ramp = plan_throw_ramp(asked); // 30, 60, 90 | 120, 150, 180, 200
    REQUIRE(ramp);
    CHECK(ramp->weeks[2].sessions.size() == 3);
    CHECK(ramp->weeks[3].sessions.size() == 6);
}

TEST_CASE("games and days off are left out; the week after a short one rises from what it held") {
    auto asked = wanted(120);
    asked.days_off = {day(9), day(7), day(8), day(10), day(11)}; // all but the weekend of week 2
    const auto ramp = plan_throw_ramp(asked);
    REQUIRE(ramp);
    REQUIRE(ramp->weeks[1].sessions.size() == 1); // Saturday; Sunday would be the day after
    CHECK(ramp->weeks[1].sessions[0] == day(12));
    CHECK(ramp->weeks[1].throws == 12);
    CHECK(ramp->weeks[2].throws == 30);
    CHECK(ramp->weeks[1].words ==
          "Week 2, from 2026-05-11: 12 throws in 1 session, 12; fewer than the 18 of the week "
          "before. Days left out leave no room for 3 sessions.");
    asked.days_off.insert(asked.days_off.end(), {day(12), day(13)});
    const auto without = plan_throw_ramp(asked);
    REQUIRE(without);
    CHECK(without->weeks[1].throws == 0);
    CHECK(without->weeks[2].throws == 36);
}

TEST_CASE("what is refused, and by which field") {
    CHECK(refused(wanted(9)) == "target_throws");
    CHECK(refused(wanted(10)) == "");
    CHECK(refused(wanted(1000)) == "");
    CHECK(refused(wanted(1001)) == "target_throws");
    auto asked = wanted(100);
    asked.rise = 0.09;
    CHECK(refused(asked) == "rise");
    asked.rise = 0.21;
    CHECK(refused(asked) == "rise");
    asked.rise = 0.2;
    asked.start_throws = 101;
    CHECK(refused(asked) == "start_throws");
    asked = wanted(100);
    asked.sessions_a_week = 4; // with one day between: 8 days
    CHECK(refused(asked) == "sessions_a_week");
    asked.days_between = 0;
    CHECK(refused(asked) == "");
    asked = wanted(801);
    asked.sessions_a_week = 2;
    CHECK(refused(asked) == "sessions_a_week"); // 401 a session
    asked = wanted(100);
    asked.last_date = day(30); // 15, 30, 45, 60, 75 in five weeks
    const auto no_room = plan_throw_ramp(asked);
    REQUIRE_FALSE(no_room);
    CHECK(no_room.refusal().code == RefusalCode::no_block_fits);
    asked.last_date = day(-1);
    CHECK(refused(asked) == "last_date");
    asked = wanted(100);
    for (int d = 0; d < 400; ++d)
        asked.days_off.push_back(day(d));
    CHECK(refused(asked) == "days_off");
}

TEST_CASE("any ramp keeps its own rules") {
    std::mt19937 random(20260504);
    const auto draw = [&](int low, int high) {
        return std::uniform_int_distribution<int>(low, high)(random);
    };
    int planned = 0;
    for (int trial = 0; trial < 5000; ++trial) {
        auto asked = wanted(draw(10, 1000));
        asked.rise = draw(10, 20) / 100.0;
        asked.start_throws = draw(0, 3) == 0 ? draw(0, asked.target_throws) : 0;
        asked.days_between = draw(0, 2);
        asked.sessions_a_week = draw(1, std::min(6, 7 / (asked.days_between + 1)));
        for (int n = draw(0, 60); n > 0; --n)
            asked.days_off.push_back(day(draw(0, 150)));
        const auto ramp = plan_throw_ramp(asked);
        if (!ramp)
            continue;
        ++planned;
        CHECK(ramp->weeks.back().throws == asked.target_throws);
        int before = asked.start_throws;
        for (const auto& week : ramp->weeks) {
            if (week.throws == 0)
                continue;
            CHECK(week.throws - before <= std::max(1.0, asked.rise * asked.target_throws + 1e-9));
            before = week.throws;
        }
        std::size_t next = 0;
        for (const auto& week : ramp->weeks)
            for (const Date session : week.sessions) {
                CHECK(std::count(asked.days_off.begin(), asked.days_off.end(), session) == 0);
                CHECK((session >= week.first && session <= week.first + 6));
                REQUIRE(ramp->dates.at(next) == session);
                const bool early = 2 * week.throws < asked.target_throws;
                if (next > 0 && week.sessions.front() != session)
                    CHECK(session - ramp->dates[next - 1] > asked.days_between);
                if (next > 0 && early &&
                    week.sessions.size() == static_cast<std::size_t>(asked.sessions_a_week))
                    CHECK(session - ramp->dates[next - 1] >= 2);
                ++next;
            }
        const auto notes = check_throw_steps(asked, ramp->steps);
        CHECK((notes->empty() ? "" : notes->front().sentence) == "");
    }
    CHECK(planned > 3000);
}

TEST_CASE("edited steps: a rise above the share is noted, not refused; what is no step is refused") {
    const auto asked = wanted(120); // 15 % of a session of 40 are 6 throws
    const std::vector<ThrowStep> steps{{6, {}, {}, ""}, {12, {}, {}, ""}, {19, {}, {}, ""}, {10, {}, {}, ""}};
    const auto notes = check_throw_steps(asked, steps);
    REQUIRE(notes);
    REQUIRE(notes->size() == 1);
    CHECK(notes->front().step == 2);
    CHECK(notes->front().sentence ==
          "19 throws, 7 more than the step before; 15 % of the target's session are 6.0.");
    CHECK(check_throw_steps(asked, {}).refusal().field == "steps");
    CHECK(check_throw_steps(asked, std::vector<ThrowStep>{{401, {}, {}, ""}}).refusal().field ==
          "steps[0].throws");
}

TEST_CASE("days between: as a clinician wrote them; at least one while a ramp's step is small") {
    ThrowSteps steps{AthleteId{"a"},
                     1,
                     StepsOrigin::ramp,
                     "Coach",
                     day(0),
                     0,
                     {{10, {}, {}, ""}, {20, {}, {}, ""}, {40, {}, {}, ""}},
                     "",
                     "",
                     day(0)};
    CHECK(days_between_after(steps, 0) == 1);
    CHECK(days_between_after(steps, 1) == 0);
    steps.origin = StepsOrigin::clinician;
    CHECK(days_between_after(steps, 0) == 0);
    steps.days_between = 2;
    CHECK(days_between_after(steps, 2) == 2);
}
