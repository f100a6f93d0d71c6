// Accounts of small invented logs, counted by hand.
#include "throwing_workload/throw_account.h"

#include <doctest/doctest.h>

#include <algorithm>

using namespace amentum;

namespace {

Date day(int d) {
    return *parse_date("2026-03-02", "date") + d;
} // a Monday, and days after it

ThrowEntry throws(int d, ThrowSetting setting, int count) {
    return {AthleteId{"a"}, day(d), setting, count, {}, {}, {}, {}, {}, {}, {}, ""};
}

} // namespace

TEST_CASE("no throws, no account") {
    const auto account = measure_throws({}, day(0));
    CHECK(account.days.empty());
    CHECK_FALSE(account.days_since_hard);
}

TEST_CASE("days of nobody's word are unknown, and taken as 0 in the averages") {
    const std::vector<ThrowEntry> log{
        throws(0, ThrowSetting::bullpen, 30), throws(0, ThrowSetting::catch_play, 40),
        throws(4, ThrowSetting::catch_play, 50), throws(30, ThrowSetting::game, 80)};
    const auto account = measure_throws(log, day(10)); // the game of day 30 is not yet
    REQUIRE(account.days.size() == 11);
    CHECK(account.days[0].throws == 70);
    CHECK(account.days[0].hard == 30);
    CHECK(account.days[1].throws == 0);
    CHECK(account.days[0].known == DayKnown::thrown);
    CHECK(account.days[1].known == DayKnown::unknown);
    CHECK(account.unknown_last_7 == 6);   // all but day 4
    CHECK(account.unknown_last_28 == 26); // all but days 0 and 4, the days before day 0 included
    CHECK(account.days_since_hard == 10);
    CHECK(account.last_hard_setting == ThrowSetting::bullpen);
    CHECK(account.last_7_days == 50);  // days 4 to 10
    CHECK(account.the_7_before == 70); // days -3 to 3
    REQUIRE(account.weeks.size() == 2);
    CHECK(account.weeks[0].throws == 120);
    CHECK(account.weeks[0].days_with_throws == 2);
    CHECK(account.days[1].average_7 == doctest::Approx(70 * 0.75)); // 0.25 x 0 + 0.75 x 70
}

TEST_CASE("the first 28 days are warming up") {
    const auto account = measure_throws(std::vector{throws(0, ThrowSetting::catch_play, 10)}, day(40));
    CHECK(account.days[27].warming_up);
    CHECK_FALSE(account.days[28].warming_up);
}

TEST_CASE("hard by effort, or by speed against the own best with the same ball") {
    auto easy = throws(0, ThrowSetting::catch_play, 20);
    auto meant_hard = throws(1, ThrowSetting::flat_ground, 20);
    meant_hard.effort = 0.9;
    auto fast = throws(2, ThrowSetting::flat_ground, 20);
    fast.speed = Speed::miles_per_hour(80);
    auto slower = throws(3, ThrowSetting::flat_ground, 20);
    slower.speed = Speed::miles_per_hour(71); // 0.8875 of 80
    auto heavy = throws(4, ThrowSetting::ball_drill, 20);
    heavy.speed = Speed::miles_per_hour(40);
    heavy.ball_mass = Mass::pounds(2); // its own best with that ball
    const std::vector<ThrowEntry> log{easy, meant_hard, fast, slower, heavy};
    const auto account = measure_throws(log, day(4));
    CHECK(account.days[0].hard == 0);
    CHECK(account.days[1].hard == 20);
    CHECK(account.days[2].hard == 20);
    CHECK(account.days[3].hard == 0);
    CHECK(account.days[4].hard == 20);
}

TEST_CASE("only pitches in games are what rules count") {
    const std::vector<ThrowEntry> log{throws(0, ThrowSetting::game, 40), throws(0, ThrowSetting::bullpen, 25),
                                      throws(2, ThrowSetting::catch_play, 60)};
    const auto pitches = game_pitches(log);
    REQUIRE(pitches.size() == 1);
    CHECK(pitches.at(day(0)) == 40);
}

TEST_CASE("a day somebody wrote nothing down for is a true zero, and one of innings caught is not") {
    auto caught = throws(2, ThrowSetting::fielding, 0);
    caught.outs_caught = 9;
    const std::vector<ThrowEntry> log{throws(0, ThrowSetting::none, 0), throws(1, ThrowSetting::none, 0),
                                      throws(1, ThrowSetting::catch_play, 20), caught};
    const auto account = measure_throws(log, day(3));
    REQUIRE(account.days.size() == 4);
    CHECK(account.days[0].known == DayKnown::none);
    CHECK(account.days[1].known == DayKnown::thrown);
    CHECK(account.days[2].known == DayKnown::thrown);
    CHECK(account.days[2].throws == 0);
    CHECK(account.days[3].known == DayKnown::unknown);
    CHECK(account.unknown_last_7 == 4); // day 3, and three days before anybody wrote
    CHECK(measure_throws({}, day(0)).unknown_last_28 == 28);
}

TEST_CASE("throws in the field count as throws, not as pitches, and are not hard by where they were made") {
    const std::vector<ThrowEntry> log{throws(0, ThrowSetting::fielding, 30),
                                      throws(0, ThrowSetting::game, 12)};
    const auto account = measure_throws(log, day(0));
    CHECK(account.days[0].throws == 42);
    CHECK(account.days[0].hard == 12);
    CHECK(account.days[0].of(ThrowSetting::fielding) == 30);
    CHECK(game_pitches(log).at(day(0)) == 12);
}

TEST_CASE("the worst soreness noted in a day stands for it") {
    auto morning = throws(0, ThrowSetting::catch_play, 20), evening = throws(0, ThrowSetting::mound, 20);
    morning.soreness_before = 1, morning.soreness_after = 4;
    evening.soreness_before = 3, evening.soreness_next_day = 0;
    const auto account = measure_throws(std::vector{evening, morning}, day(0));
    CHECK(account.days[0].soreness.before == 3);
    CHECK(account.days[0].soreness.after == 4);
    CHECK(account.days[0].soreness.next_day == 0);
}

// Throws meant at half of full effort left the hand at 0.85 of full speed [Fiegen2023], at 0.78 on flat ground [Melugin2019]:
// the radar is asked first, the feeling only where there was no radar.
TEST_CASE("radar comes before feel") {
    auto best = throws(0, ThrowSetting::flat_ground, 10), meant_easy = best, meant_hard = best, felt = best;
    best.speed = Speed::miles_per_hour(37.5);
    meant_easy.effort = 0.5, meant_easy.speed = Speed::miles_per_hour(34.1);
    meant_hard.effort = 0.95, meant_hard.speed = Speed::miles_per_hour(30);
    felt.effort = 0.95;
    CHECK(is_hard(meant_easy, best.speed));
    CHECK_FALSE(is_hard(meant_hard, best.speed));
    CHECK(is_hard(felt, best.speed));
    CHECK(describe_effort(meant_easy, best.speed) == "34.1 mph, 0.91 of the own best 37.5: hard");
    CHECK(describe_effort(meant_hard, best.speed) == "30.0 mph, 0.80 of the own best 37.5: not hard");
    CHECK(describe_effort(felt, {}) == "meant at 0.95 of full effort, no speed read: hard");
    CHECK(describe_effort(throws(0, ThrowSetting::long_toss, 10), {}) ==
          "no speed read, no effort noted: hard, as all throws of long toss count");
}

TEST_CASE("the own best is asked for within a gram of each ball, whatever the order") {
    auto a = throws(0, ThrowSetting::flat_ground, 1), b = a, c = a;
    a.ball_mass = Mass::grams(144), a.speed = Speed::metres_per_second(30);
    b.ball_mass = Mass::grams(144.9), b.speed = Speed::metres_per_second(35);
    c.ball_mass = Mass::grams(145.8), c.speed = Speed::metres_per_second(40);
    for (const auto& log : {std::vector{a, b, c}, std::vector{c, a, b}, std::vector{b, c, a}}) {
        CHECK(own_best(log, Mass::grams(144)) == b.speed); // c is 1.8 g away
        CHECK(own_best(log, Mass::grams(144.9)) == c.speed);
        CHECK_FALSE(own_best(log, std::nullopt));
    }
}

TEST_CASE("the order of entries changes nothing") {
    std::vector<ThrowEntry> log;
    for (int d = 0; d < 60; ++d) {
        log.push_back(throws(d, static_cast<ThrowSetting>(d % 9), 10 + 7 * d % 50));
        log.back().speed = Speed::metres_per_second(20 + 11 * d % 17);
        log.push_back(throws(d, ThrowSetting::mound, 10));
        log.push_back(throws(d, ThrowSetting::game, d % 20));
    }
    const auto forward = measure_throws(log, day(60));
    std::reverse(log.begin(), log.end());
    const auto backward = measure_throws(log, day(60));
    REQUIRE(forward.days.size() == backward.days.size());
    for (std::size_t i = 0; i < forward.days.size(); ++i) {
        CHECK(forward.days[i].throws == backward.days[i].throws);
        CHECK(forward.days[i].hard == backward.days[i].hard);
        CHECK(forward.days[i].average_28 == backward.days[i].average_28);
    }
    CHECK(forward.last_hard_setting == backward.last_hard_setting);
    CHECK(forward.last_hard_setting ==
          ThrowSetting::long_toss); // 23 of day 59, against 10 from the mound and 19 pitches
    CHECK(forward.last_high == backward.last_high);
}

TEST_CASE("a week beside the own six before it: least, middle, most, and the unknown days") {
    std::vector<ThrowEntry> log; // from a Monday, eight weeks: 3 days written of each, 10, 20 ... 80 a day
    for (int week = 0; week < 8; ++week)
        for (const int d : {0, 2, 4})
            log.push_back(throws(7 * week + d, d == 4 ? ThrowSetting::bullpen : ThrowSetting::catch_play,
                                 10 * (week + 1)));
    const auto account = measure_throws(log, day(7 * 7 + 4)); // the eighth Friday
    REQUIRE(account.weeks.size() == 8);
    CHECK(account.weeks[0].own.weeks == 0);
    CHECK(account.weeks[0].whole);
    const auto& now = account.weeks[7];
    CHECK_FALSE(now.whole);
    CHECK(now.throws == 240);
    CHECK(now.unknown_days == 2);
    CHECK(now.own.weeks == 6); // the second to the seventh: 60, 90, 120, 150, 180, 210
    CHECK(now.own.throws.least == 60);
    CHECK(now.own.throws.middle == 135);
    CHECK(now.own.throws.most == 210);
    CHECK(now.own.hard_throws.middle == 45); // 20, 30, 40, 50, 60, 70
    CHECK(now.own.unknown_days == 24);
    CHECK(
        describe_own_weeks(now) ==
        "At least 240 throws in the week of 2026-04-20 as far as it stands here, 80 of them hard (2 days "
        "unknown); 6 weeks "
        "before to compare with: throws 60 to 210, middle 135; hard 20 to 70, middle 45 (24 days unknown).");
}

TEST_CASE("weeks of nobody's word, and a first week that began midweek, are not compared with") {
    const std::vector<ThrowEntry> log{throws(2, ThrowSetting::catch_play, 30),
                                      throws(8, ThrowSetting::catch_play, 50),
                                      throws(22, ThrowSetting::catch_play, 40)};
    const auto account = measure_throws(log, day(22));
    REQUIRE(account.weeks.size() == 4);
    CHECK_FALSE(account.weeks[0].whole); // from Wednesday
    CHECK(account.weeks[3].own.weeks == 1);
    CHECK(account.weeks[3].own.throws.most == 50);
}

TEST_CASE("a high day is one of the thrower's own, told from eight days with throws on") {
    std::vector<ThrowEntry> log;
    for (int d = 0; d < 7; ++d)
        log.push_back(throws(d, ThrowSetting::catch_play, 10 * (d + 1)));
    CHECK_FALSE(measure_throws(log, day(9)).high_from);
    log.push_back(throws(7, ThrowSetting::catch_play, 5));
    const auto account = measure_throws(log, day(9)); // 5 10 20 30 40 50 60 70: the sixth of eight
    CHECK(account.high_from == 50);
    CHECK(account.last_high == day(6));
    CHECK(account.days_since_high == 3);
}
