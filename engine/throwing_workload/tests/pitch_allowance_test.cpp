// What one table leaves of an arm's days, on an invented league whose answers were counted by hand on a calendar.
// Finishing a batter, and what the day then counts as: from memory of how leagues play, no source read.
#include "throwing_workload/pitch_allowance.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <tuple>

using namespace amentum;

namespace {

Date on(const char* text) {
    return *parse_date(text, "date");
}

// 10 to 11 years: 50 pitches, 0 days of rest to 20, 1 to 35, 2 to 50. 12 to 14 years: 80; 0 to 30, 1 to 60, 2 to 80.
std::vector<PitchRule> league() {
    return {{"Harbour league", 2026, Sport::baseball, 10, 11, 50, {20, 35, 50}, {}, {}, {}, {}, "", {}},
            {"Harbour league", 2026, Sport::baseball, 12, 14, 80, {30, 60, 80}, {}, {}, {}, {}, "", {}}};
}

ThrowEntry game(const char* date, int pitches, int occasion = 1, const std::string& name = "") {
    ThrowEntry entry{AthleteId{"a"}, on(date), ThrowSetting::game, pitches, {}, {}, {}, {}, {}, {}, {}, ""};
    entry.occasion = occasion;
    entry.game = name;
    return entry;
}

ThrowEntry caught(const char* date, int outs) {
    ThrowEntry entry{AthleteId{"a"}, on(date), ThrowSetting::fielding, 0, {}, {}, {}, {}, {}, {}, {}, ""};
    entry.outs_caught = outs;
    return entry;
}

struct Arm {
    std::vector<PitchRule> rows;
    Date born;
    std::vector<ThrowEntry> entries;

    PitchTableOfArm table() const { return {rows, born}; }
    int most(const char* date, const std::string& game = "") const {
        return measure_allowance(table(), pitching_days(entries), on(date), game)->most;
    }
    std::string next(const char* date) const {
        return next_day_to_pitch(table(), pitching_days(entries), on(date))->text();
    }
    // The first limit of the day, in words.
    std::string words(const char* date, const std::string& game = "") const {
        const auto allowance = measure_allowance(table(), pitching_days(entries), on(date), game);
        return describe_limit(table(), allowance->limits.front(), on(date));
    }
};

Arm thirteen_years_old(std::vector<ThrowEntry> entries) {
    return {league(), on("2013-01-15"), std::move(entries)};
}

} // namespace

TEST_CASE("the days the clocks change are days like others: rest is counted in dates, not in hours") {
    // 2026-03-08 and 2026-11-01 in North America, 2026-03-29 and 2026-10-25 in Europe: days of 23 and 25 hours
    for (const auto& [pitched, rest, next] : {std::tuple("2026-03-07", "2026-03-08", "2026-03-09"),
                                              std::tuple("2026-03-28", "2026-03-29", "2026-03-30"),
                                              std::tuple("2026-10-24", "2026-10-25", "2026-10-26"),
                                              std::tuple("2026-10-31", "2026-11-01", "2026-11-02")}) {
        const Arm arm = thirteen_years_old({game(pitched, 45)}); // one day of rest
        CHECK(arm.most(rest) == 0);
        CHECK(arm.next(rest) == next);
        CHECK(arm.words(rest) == "1 day of rest after 45 pitches on " + std::string(pitched) +
                                     " (above 30, not above 60 at 12 to 14 years): " + rest + ".");
    }
}

TEST_CASE("rest goes over 29 February in a leap year and past it in a common one") {
    CHECK(Arm{league(), on("2014-06-01"), {game("2028-02-28", 70)}}.next("2028-02-29") == "2028-03-02");
    CHECK(Arm{league(), on("2013-06-01"), {game("2026-02-27", 70)}}.next("2026-02-28") == "2026-03-02");
}

TEST_CASE("a birthday on 29 February is kept on 1 March in common years") {
    const Arm arm{league(), on("2016-02-29"), {}};
    CHECK(arm.most("2028-02-28") == 50); // 11 years
    CHECK(arm.most("2028-02-29") == 80); // 12
    const Arm common{league(), on("2016-02-29"), {}};
    CHECK(measure_allowance(common.table(), {}, on("2031-02-28"))->most == 80); // 14
    CHECK_FALSE(measure_allowance(common.table(), {}, on("2031-03-01")));       // 15: no row
}

TEST_CASE("a birthday between two games: the rest is by the row of the day pitched, the maximum by today's") {
    Arm arm{
        league(), on("2014-05-02"), {game("2026-05-01", 36)}}; // 36 at 11: two days; at 12 it would be one
    CHECK(arm.most("2026-05-03") == 0);
    CHECK(arm.most("2026-05-04") == 80);
    CHECK(arm.words("2026-05-02") ==
          "2 days of rest after 36 pitches on 2026-05-01 (above 35, not above 50 at 10 to 11 years): "
          "2026-05-02 to 2026-05-03.");
    arm.entries = {game("2026-05-02", 36)}; // on the birthday itself: 12 years
    CHECK(arm.next("2026-05-03") == "2026-05-04");
}

TEST_CASE(
    "an age reckoned on a day of the year holds all that year, on both sides of that day and the birthday") {
    Arm arm{league(), on("2014-08-31"), {}};
    for (auto& row : arm.rows) {
        row.age_month = 9;
        row.age_day = 1;
    }
    CHECK(arm.most("2026-03-01") == 80); // 12 on 1 September 2026, though 11 in March
    CHECK(arm.most("2025-12-31") == 50); // 11 on 1 September 2025
    arm.born = on("2014-09-02");         // two days younger: a year behind
    CHECK(arm.most("2026-10-01") == 50);
    CHECK(age_by(arm.rows[0], arm.born, on("2026-10-01")) == 11);
}

TEST_CASE("a double-header: never a second game, or only after a count that asks no rest") {
    Arm arm = thirteen_years_old({game("2026-05-01", 30)});
    CHECK(arm.most("2026-05-01") == 50); // the table does not speak of two games
    arm.rows[1].second_game = SecondGame::never;
    CHECK(arm.most("2026-05-01") == 0);
    arm.rows[1].second_game = SecondGame::after_no_rest_count;
    CHECK(arm.most("2026-05-01") == 50);
    arm.entries = {game("2026-05-01", 31)};
    CHECK(arm.most("2026-05-01") == 0);
    CHECK(arm.words("2026-05-01") ==
          "31 pitches in another game on 2026-05-01 (12 to 14 years): a second game "
          "only after a count that asks no rest, at most 30.");
    arm.entries = {game("2026-05-01", 25), game("2026-05-01", 15, 2)}; // 40 of the day, two teams or one
    CHECK(arm.next("2026-05-02") == "2026-05-03");
}

TEST_CASE("a batter finished past a band's end: the day counts as the end reached while he batted") {
    Arm arm = thirteen_years_old({game("2026-05-01", 33)});
    arm.rows[1].last_batter = LastBatter::counts_as_reached;
    CHECK(arm.next("2026-05-02") == "2026-05-03"); // nobody wrote when he came up: as thrown
    arm.entries[0].before_last_batter = 29;        // the 30th was thrown to him
    CHECK(arm.next("2026-05-02") == "2026-05-02");
    arm.entries[0].before_last_batter = 30; // the end was reached before him
    CHECK(arm.next("2026-05-02") == "2026-05-03");
    arm.rows[1].last_batter = LastBatter::past_daily_maximum; // the rest is by what was thrown
    arm.entries[0].before_last_batter = 29;
    CHECK(arm.next("2026-05-02") == "2026-05-03");
}

TEST_CASE("a batter finished past the daily maximum is no breach where the table lets him be finished") {
    Arm arm = thirteen_years_old({game("2026-05-01", 84)});
    const auto breach = [&] {
        const auto days = pitching_days(arm.entries);
        return breaks_daily_maximum(arm.rows[1], days.front());
    };
    arm.entries[0].before_last_batter = 79;
    CHECK(breach()); // unsaid
    arm.rows[1].last_batter = LastBatter::past_daily_maximum;
    CHECK_FALSE(breach());
    arm.entries[0].before_last_batter = 80;
    CHECK(breach());
    arm.entries[0].before_last_batter.reset();
    CHECK(breach());
}

TEST_CASE("of two games on a day only the last one's last batter counts, after the pitches of the first") {
    Arm arm = thirteen_years_old({game("2026-05-01", 20), game("2026-05-01", 45, 2)}); // 65: two days
    arm.rows[1].last_batter = LastBatter::counts_as_reached;
    arm.entries[0].before_last_batter = 0; // of the first game: of no meaning
    CHECK(arm.next("2026-05-02") == "2026-05-04");
    arm.entries[1].before_last_batter = 39; // 20 + 39 before him: 60 was reached to him
    CHECK(arm.next("2026-05-02") == "2026-05-03");
    arm.entries[1].before_last_batter = 40;
    CHECK(arm.next("2026-05-02") == "2026-05-04");
}

TEST_CASE("a suspended game goes on under its name: its pitches add up over its days, rest goes by the day") {
    Arm arm = thirteen_years_old({game("2026-05-01", 25, 1, "Harbour at Saltgrass"), game("2026-05-02", 10)});
    arm.rows[1].game_max = 60;
    arm.rows[1].second_game = SecondGame::never;
    CHECK(arm.most("2026-05-03", "Harbour at Saltgrass") == 35);
    CHECK(arm.most("2026-05-03") == 60);                         // another game
    CHECK(arm.most("2026-05-02", "Harbour at Saltgrass") == 0);  // there was another game that day
    CHECK(arm.most("2026-05-01", "Harbour at Saltgrass") == 35); // the same game is no second game
    CHECK(arm.words("2026-05-03", "Harbour at Saltgrass") ==
          "At most 60 pitches in a game at 12 to 14 years; 25 thrown in it since 2026-05-01, 35 left.");
}

TEST_CASE("pitching and catching on one day") {
    Arm arm = thirteen_years_old({caught("2026-05-01", 11), game("2026-05-02", 41)});
    arm.rows[1].no_pitching_caught = 4;
    arm.rows[1].no_catching_from = 41;
    CHECK(arm.most("2026-05-01") == 80);
    arm.entries[0].outs_caught = 12; // four innings
    CHECK(arm.most("2026-05-01") == 0);
    CHECK(arm.words("2026-05-01") ==
          "12 outs (4 innings) caught on 2026-05-01: no pitching on a day of 4 innings "
          "caught or more at 12 to 14 years.");
    const auto days = pitching_days(arm.entries);
    CHECK(may_catch(arm.table(), days, on("2026-05-01")));
    CHECK_FALSE(may_catch(arm.table(), days, on("2026-05-02")));
    CHECK(may_catch(arm.table(), days, on("2026-05-03")));
}

TEST_CASE(
    "a third day running, and a fourth: days of no pitches break the run, a day of catching alone too") {
    Arm arm = thirteen_years_old({game("2026-05-01", 10), game("2026-05-02", 10)});
    arm.rows[1].third_day_max = 25;
    CHECK(arm.most("2026-05-03") == 25);
    arm.entries.push_back(game("2026-05-03", 5));
    CHECK(arm.most("2026-05-03") == 20);
    CHECK(arm.words("2026-05-04") ==
          "Pitches on every day from 2026-05-01 to 2026-05-03: at most 25 pitches on a "
          "third day running at 12 to 14 years; 0 thrown on 2026-05-04, 25 left.");
    arm.entries[1] = caught("2026-05-02", 9);
    CHECK(arm.most("2026-05-04") == 80);
    arm.rows[1].most_days_running = 1;
    CHECK(arm.most("2026-05-04") == 0);
    CHECK(arm.words("2026-05-04") ==
          "Pitches on 1 day running, 2026-05-03: at most 1 at 12 to 14 years, so none "
          "on 2026-05-04.");
    CHECK(arm.next("2026-05-04") == "2026-05-05");
}

TEST_CASE(
    "innings of 12 months: the same date a year before is out, the day after it in; over 29 February too") {
    Arm arm{league(), on("2014-06-01"), {game("2027-05-01", 1), game("2027-05-02", 1)}};
    arm.rows[1].yearly_innings = 10;
    arm.entries[0].outs = 29;
    arm.entries[1].outs = 1;
    CHECK(arm.most("2028-04-30") == 0); // both: from 2027-05-01 on
    CHECK(arm.words("2028-04-30") ==
          "30 outs (10 innings) pitched in the 12 months to 2028-04-30: at most 10 "
          "innings in 12 months at 12 to 14 years.");
    CHECK(arm.next("2027-05-03") == "2028-05-01");
    Arm leap{
        league(), on("2016-06-01"), {game("2027-02-28", 1)}}; // by 29 February a year before is 28 February
    leap.rows[0].yearly_innings = 10;
    leap.entries[0].outs = 30;
    CHECK(leap.most("2028-02-28") == 50); // 2027-02-28 is the same date: out
    leap.entries[0].date = on("2027-03-01");
    CHECK(leap.most("2028-02-29") == 0); // from 1 March 2027 on
    CHECK(leap.next("2028-02-29") == "2028-03-01");
}

TEST_CASE("all teams' pitches add up, and what is written down late counts as if it had stood there") {
    Arm arm = thirteen_years_old({game("2026-05-01", 20), game("2026-05-01", 20, 2)});
    arm.entries[0].team = "Harbour";
    arm.entries[1].team = "Saltgrass school";
    CHECK(arm.most("2026-05-01") == 40);
    CHECK(arm.next("2026-05-02") == "2026-05-03");
    arm.entries.push_back(
        game("2026-04-30", 75)); // two days of rest, entered last: 3 May is the first free day
    CHECK(arm.next("2026-05-01") == "2026-05-03");
    auto shuffled = arm;
    std::reverse(shuffled.entries.begin(), shuffled.entries.end());
    for (const char* day : {"2026-04-30", "2026-05-01", "2026-05-02", "2026-05-03"})
        CHECK(shuffled.most(day) == arm.most(day));
    CHECK(arm.most("2026-04-29") == 80); // the days after it are no part of its answer
}

TEST_CASE("a bullpen, a bucket of catch, a day known to be empty: no pitches to batters, nothing owed") {
    Arm arm = thirteen_years_old({game("2026-05-01", 75), game("2026-05-01", 60, 2)});
    arm.entries[0].setting = ThrowSetting::bullpen;
    arm.entries[1].setting = ThrowSetting::none;
    CHECK(pitching_days(arm.entries).empty());
    CHECK(arm.most("2026-05-02") == 80);
}

TEST_CASE(
    "an age without a row is refused with the ages there are, and the next day is the one that has a row") {
    const Arm arm{league(), on("2016-07-01"), {}};
    const auto refused = measure_allowance(arm.table(), {}, on("2026-06-30"));
    REQUIRE_FALSE(refused);
    CHECK(refused.refusal().given == "9");
    CHECK(refused.refusal().allowed == "10 to 11 years, 12 to 14 years");
    CHECK(arm.next("2026-06-01") == "2026-07-01");
}
