// Which tables are refused and why, and which hold when some are kept here; on an invented league.
#include "throwing_workload/check_pitch_table.h"
#include "throwing_workload/pitch_rule.h"
#include "throwing_workload/pitch_tables_in_force.h"

#include <doctest/doctest.h>

#include <functional>

using namespace amentum;

namespace {

const PitchRule young{
    "Harbour league", 2026, Sport::baseball, 8, 10, 50, {20, 35, 50}, {}, {}, {}, {}, "", {}};
const PitchRule older{"Harbour league", 2026, Sport::baseball, 11, 14, 80, {30, 80}, 70, 0, 2, 90, "", {}};

Refusal broken(const std::function<void(PitchRule&)>& change) {
    std::vector<PitchRule> rows{young, older};
    change(rows[1]);
    const auto checked = check_pitch_table(rows);
    REQUIRE_FALSE(checked);
    return checked.refusal();
}

PitchTable kept(int number, std::vector<PitchRule> rules, const std::string& organisation) {
    return {number,
            std::move(rules),
            organisation,
            Sport::baseball,
            "Ona Reyes",
            *parse_date("2026-05-01", "date"),
            "the league voted"};
}

std::vector<int> maxima(const std::vector<PitchRule>& rules) {
    std::vector<int> all;
    for (const auto& rule : rules)
        all.push_back(rule.daily_max);
    return all;
}

} // namespace

TEST_CASE("a whole table is taken, with bands or without") {
    CHECK(check_pitch_table(std::vector{young, older}));
    CHECK(check_pitch_table(std::vector{older, young})); // in any order
    PitchRule bare = young;
    bare.rest_to = {};
    CHECK(check_pitch_table(std::vector{bare, older}));
    CHECK(check_pitch_table({}).refusal().code == RefusalCode::missing_field);
}

TEST_CASE("a fault names the row by its ages, the column, what stands there and what is allowed") {
    const auto falls = broken([](PitchRule& r) { r.rest_to = {30, 25, 80}; });
    CHECK(falls.sentence == "11 to 14 years, rest_1_to is 25: bands must rise.");
    CHECK(falls.field == "11 to 14 years, rest_1_to");
    CHECK(falls.given == "25");
    CHECK(falls.allowed == "above 30");
    const auto gap = broken([](PitchRule& r) { r.rest_to = {30, {}, 80}; });
    CHECK(gap.sentence == "11 to 14 years, rest_1_to is empty: a band after it, rest_2_to, is given.");
    CHECK(broken([](PitchRule& r) {
              r.rest_to = {30, 70};
          }).sentence == "11 to 14 years, rest_1_to is 70: the last band must end at the daily maximum.");
    CHECK(broken([](PitchRule& r) { r.rest_to = {30, 90}; }).allowed == "at most 80");
    CHECK(broken([](PitchRule& r) { r.game_max = 81; }).allowed == "1 to 80");
    CHECK(broken([](PitchRule& r) { r.third_day_max = 81; }).field == "11 to 14 years, third_day_max");
    CHECK(broken([](PitchRule& r) { r.daily_max = 401; }).allowed == "1 to 400");
    CHECK(broken([](PitchRule& r) { r.most_days_running = 8; }).allowed == "1 to 7");
    CHECK(broken([](PitchRule& r) { r.yearly_innings = 0; }).allowed == "1 to 400");
    CHECK(broken([](PitchRule& r) { r.no_pitching_caught = 21; }).allowed == "1 to 20");
    CHECK(broken([](PitchRule& r) { r.no_catching_from = 0; }).allowed == "1 to 400");
    CHECK(broken([](PitchRule& r) {
              r.months_off = 4;
              r.months_off_running = 5;
          }).allowed == "0 to 4");
}

TEST_CASE(
    "ages leave no hole and do not overlap; an age day is one for the table and one that every year has") {
    CHECK(broken([](PitchRule& r) { r.age_low = 10; }).sentence ==
          "10 to 14 years, age_low is 10: these ages are already covered by the row of 8 to 10 years.");
    CHECK(broken([](PitchRule& r) { r.age_low = 12; }).allowed == "11");
    CHECK(broken([](PitchRule& r) { r.age_high = 10; }).field == "11 to 10 years, age_high");
    CHECK(broken([](PitchRule& r) { r.age_month = 5; }).field == "11 to 14 years, age_day");
    CHECK(broken([](PitchRule& r) {
              r.age_month = 5;
              r.age_day = 1;
          }).allowed == "one day for all rows");
    PitchRule leap = older;
    leap.age_month = 2;
    leap.age_day = 29;
    CHECK(check_pitch_table(std::vector{leap}).refusal().allowed == "a day every year has");
    leap.age_day = 28;
    CHECK(check_pitch_table(std::vector{leap}));
}

TEST_CASE("one table is of one organisation, year and sport") {
    CHECK(broken([](PitchRule& r) { r.organisation = "Saltgrass league"; }).allowed == "Harbour league");
    CHECK(broken([](PitchRule& r) { r.year = 2027; }).allowed == "2026");
    CHECK(broken([](PitchRule& r) { r.sport = Sport::softball; }).allowed == "baseball");
}

TEST_CASE("the last table kept takes the place of all rows of its organisation and sport; an empty one gives "
          "back") {
    PitchRule other = young, new_row = young, newer_row = young, unknown = young;
    other.organisation = "Saltgrass league";
    other.daily_max = 60;
    new_row.daily_max = 55;
    newer_row.daily_max = 45;
    newer_row.year = 2019; // whatever the year
    unknown.organisation = "Cape league";
    unknown.daily_max = 40;
    const std::vector built_in{young, older, other};
    CHECK(maxima(pitch_tables_in_force(built_in, {})) == std::vector{50, 80, 60});
    std::vector tables{kept(2, {newer_row}, "Harbour league"), kept(1, {new_row}, "Harbour league"),
                       kept(3, {unknown}, "Cape league")};
    const auto held = pitch_tables_in_force(built_in, tables);
    CHECK(maxima(held) == std::vector{45, 60, 40});
    CHECK(organisations_for(held, Sport::baseball) ==
          std::vector<std::string>{"Harbour league", "Saltgrass league", "Cape league"});
    CHECK_FALSE(
        pitch_rule_for(held, "Harbour league", Sport::baseball, 12)); // the old row is gone with its table
    tables.push_back(kept(4, {}, "Harbour league"));
    CHECK(maxima(pitch_tables_in_force(built_in, tables)) == std::vector{50, 80, 60, 40});
    tables.push_back(kept(5, {}, "Cape league"));
    CHECK(maxima(pitch_tables_in_force(built_in, tables)) == std::vector{50, 80, 60});
}

TEST_CASE("a table of another sport leaves the rows of this one") {
    PitchTable softball = kept(1, {young}, "Harbour league");
    softball.sport = softball.rules[0].sport = Sport::softball;
    CHECK(pitch_tables_in_force(std::vector{young}, std::vector{softball}).size() == 2);
}
