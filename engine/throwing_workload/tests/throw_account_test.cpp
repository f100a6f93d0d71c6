// Accounts of small invented logs, counted by hand.
#include "throwing_workload/throw_account.h"

#include <doctest/doctest.h>

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

TEST_CASE("days without a record count as nothing thrown") {
    const std::vector<ThrowEntry> log{
        throws(0, ThrowSetting::bullpen, 30), throws(0, ThrowSetting::catch_play, 40),
        throws(4, ThrowSetting::catch_play, 50), throws(30, ThrowSetting::game, 80)};
    const auto account = measure_throws(log, day(10)); // the game of day 30 is not yet
    REQUIRE(account.days.size() == 11);
    CHECK(account.days[0].throws == 70);
    CHECK(account.days[0].hard == 30);
    CHECK(account.days[1].throws == 0);
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
