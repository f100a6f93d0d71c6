// Steps walked by hand on small logs: passed, repeated, stopped, too early, unknown.
#include "throwing_workload/step_progress.h"

#include <doctest/doctest.h>

#include <algorithm>

using namespace amentum;

namespace {

Date day(int d) {
    return *parse_date("2026-05-04", "date") + d;
} // a Monday, and days after it

struct Log {
    std::vector<ThrowEntry> entries = {};
    std::vector<PainEntry> pains = {};
    std::vector<PainClearance> clearances = {};

    Log& threw(int d, int throws, std::optional<double> next_day = {}) {
        entries.push_back(
            {AthleteId{"a"}, day(d), ThrowSetting::catch_play, throws, {}, {}, {}, {}, {}, {}, next_day, ""});
        return *this;
    }
    Log& hurt(int d) {
        pains.push_back(
            {AthleteId{"a"}, static_cast<int>(pains.size()) + 1, day(d), PainRegion::elbow, "", "", "Kim"});
        return *this;
    }
    Log& cleared(int number, int d) {
        clearances.push_back({AthleteId{"a"}, number, day(d), "Dr. Ada Fenwick", "Kim Osei", day(d), ""});
        return *this;
    }
};

ThrowSteps steps(std::vector<int> throws, int days_between = 1) {
    ThrowSteps all{
        AthleteId{"a"}, 1,     StepsOrigin::clinician, "Dr. Ada Fenwick", day(0), days_between, {}, "",
        "Kim",          day(0)};
    for (const int each : throws)
        all.steps.push_back({each, {}, {}, ""});
    return all;
}

StepProgress at(const ThrowSteps& plan, const Log& log, int today) {
    return measure_steps(plan, {log.entries, log.pains, log.clearances}, day(today));
}

const ThrowSteps four = steps({20, 30, 40, 50});

} // namespace

TEST_CASE("nothing thrown yet, and steps that begin later, and none at all") {
    const auto now = at(four, {}, 0);
    CHECK(now.gate == StepGate::open);
    CHECK(now.step == 0);
    CHECK(now.earliest == day(0));
    CHECK(at(four, {}, -3).gate == StepGate::not_begun);
    CHECK(at(four, {}, -3).earliest == day(0));
    CHECK(at(steps({}), {}, 0).gate == StepGate::ended);
}

TEST_CASE("pain-free, and soreness 0 the next day: passed, and the next step after the day between") {
    const auto log = Log{}.threw(0, 20, 0);
    CHECK(at(four, log, 0).gate == StepGate::waiting); // the next day is not yet
    const auto next = at(four, log, 1);
    CHECK(next.gate == StepGate::rest);
    CHECK(next.step == 1);
    CHECK(next.since == day(1));
    CHECK(next.earliest == day(2));
    CHECK(next.tries.at(0).outcome == StepOutcome::passed);
    CHECK(at(four, log, 2).gate == StepGate::open);
    CHECK(at(four, log, 2).words == "Step 2 of 4 (30 throws) is next, since 2026-05-05; it may be done on "
                                    "2026-05-06. Step 1 was passed on 2026-05-04. "
                                    "A step is passed when it was pain-free during and left no soreness the "
                                    "next day (the published criterion), with "
                                    "that soreness written down.");
}

TEST_CASE("the next day's own word will do, and the worst of both holds") {
    auto log = Log{}.threw(0, 20);
    CHECK(at(four, log, 1).gate == StepGate::waiting);
    CHECK(plan_steps_ahead(four, at(four, log, 1), day(1), {}).empty());
    log.entries.push_back({AthleteId{"a"}, day(1), ThrowSetting::none, 0, {}, {}, {}, {}, 0.0, {}, {}, ""});
    CHECK(at(four, log, 1).step == 1);
    log.entries[0].soreness_next_day = 1;
    CHECK(at(four, log, 1).step == 0);
}

TEST_CASE("sore the next day, or nobody's word: the step once more, and nothing beyond it is planned") {
    const auto sore = at(four, Log{}.threw(0, 20, 0.5), 2);
    CHECK(sore.gate == StepGate::open);
    CHECK(sore.step == 0);
    CHECK(sore.tries.at(0).outcome == StepOutcome::sore_next_day);
    const auto ahead = plan_steps_ahead(four, sore, day(2), {});
    REQUIRE(ahead.size() == 1);
    CHECK(ahead[0].step == 0);
    CHECK(ahead[0].date == day(2));
    auto unknown = Log{}.threw(0, 20);
    CHECK(at(four, unknown, 2).tries.at(0).outcome == StepOutcome::not_written);
    CHECK(at(four, unknown, 2).step == 0);
    CHECK(at(four, unknown, 2).words.find("nobody wrote down the soreness of 2026-05-05") !=
          std::string::npos);
    unknown.entries[0].soreness_next_day = 0; // a late entry re-opens the day
    CHECK(at(four, unknown, 2).step == 1);
}

TEST_CASE("nine throws in ten are the step; fewer are not, and ask for their rest all the same") {
    CHECK(at(four, Log{}.threw(0, 18, 0), 2).step == 1);
    const auto few = at(four, Log{}.threw(0, 17, 0), 1);
    CHECK(few.step == 0);
    CHECK(few.tries.empty());
    CHECK(few.earliest == day(2));
}

TEST_CASE("before the days between are over a day counts as no step") {
    const auto early = at(four, Log{}.threw(0, 20, 0).threw(1, 30, 0), 2);
    CHECK(early.step == 1);
    CHECK(early.tries.at(1).outcome == StepOutcome::too_early);
    CHECK(early.gate == StepGate::rest);
    CHECK(early.earliest == day(3));
    CHECK(at(steps({20, 30}, 0), Log{}.threw(0, 20, 0).threw(1, 30, 0), 2).gate == StepGate::through);
}

// Little-league program: "on pain stop until examined, resume one step back" [LittleLeagueInterval].
TEST_CASE("pain stops until it is cleared, then one step back") {
    auto log = Log{}.threw(0, 20, 0).threw(2, 30, 0).threw(4, 40, 0).hurt(5); // pain the day after step 3
    const auto stopped = at(four, log, 10);
    CHECK(stopped.gate == StepGate::pain);
    CHECK_FALSE(stopped.earliest);
    CHECK(stopped.tries.at(2).outcome == StepOutcome::pain);
    CHECK(plan_steps_ahead(four, stopped, day(10), {}).empty());
    CHECK(stopped.words ==
          "Stopped: a pain entry of 2026-05-09 stops throwing. Nothing is planned until a named person has "
          "cleared it; this tool clears nobody. Then it goes on with step 2 of 4 (30 throws), one step back "
          "(published for little league).");
    log.cleared(1, 12);
    CHECK(at(four, log, 11).gate == StepGate::pain);
    const auto again = at(four, log, 12);
    CHECK(again.gate == StepGate::open);
    CHECK(again.step == 1);
    CHECK(again.since == day(12));
    CHECK(plan_steps_ahead(four, again, day(12), {}).size() == 1);
    log.hurt(11); // a second entry, still open
    CHECK(at(four, log, 12).gate == StepGate::pain);
    log.cleared(2, 13);
    CHECK(at(four, log, 13).step == 1); // one stop, one step back
}

TEST_CASE("pain on the day itself, throws during a stop, and pain from before the steps") {
    const auto same_day = at(four, Log{}.threw(0, 20, 0).threw(2, 30, 0).hurt(2).threw(3, 30, 0), 5);
    CHECK(same_day.tries.at(1).outcome == StepOutcome::pain);
    CHECK(same_day.tries.at(2).outcome == StepOutcome::during_stop);
    auto before = Log{}.hurt(-9);
    CHECK(at(four, before, -2).gate == StepGate::pain);
    CHECK(at(four, before, 0).gate == StepGate::pain);
    before.cleared(1, 3);
    CHECK(at(four, before, 3).step == 0);
    CHECK(at(four, before, 3).gate == StepGate::open);
    const auto first =
        at(four, Log{}.threw(0, 20).hurt(0).cleared(1, 4), 4); // nothing is before the first step
    CHECK(first.step == 0);
    const auto cleared_at_once = at(four, Log{}.threw(0, 20, 0).threw(2, 30, 0).hurt(2).cleared(1, 2), 4);
    CHECK(cleared_at_once.step == 0); // felt all the same
}

TEST_CASE("the order of entries changes nothing; what is after today is left out") {
    auto log = Log{}.threw(0, 20, 0).threw(2, 30, 0).threw(4, 40, 2).threw(6, 40, 0);
    const auto forward = at(four, log, 8);
    std::reverse(log.entries.begin(), log.entries.end());
    CHECK(at(four, log, 8).words == forward.words);
    CHECK(forward.step == 3);
    CHECK(at(four, log, 2).tries.size() == 2);
}

TEST_CASE("all steps ahead while the last one was passed, around days off") {
    const auto now = at(four, Log{}.threw(0, 20, 0), 1);
    const std::vector<Date> off{day(2), day(5)};
    const auto ahead = plan_steps_ahead(four, now, day(1), off);
    REQUIRE(ahead.size() == 3);
    CHECK(ahead[0].date == day(3));
    CHECK(ahead[1].date == day(6));
    CHECK(ahead[2].date == day(8));
}

TEST_CASE("more throws than the step has are said") {
    CHECK(at(four, Log{}.threw(0, 60, 0), 1)
              .words.find("60 throws were made on 2026-05-04 where the step has 20.") != std::string::npos);
}
