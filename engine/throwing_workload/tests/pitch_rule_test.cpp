// What a rule says and refuses, on an invented rule; the published tables are in tests/published_examples.
#include "throwing_workload/pitch_rule.h"

#include <doctest/doctest.h>

using namespace amentum;

namespace {

const PitchRule ten_to_twelve{
    "Harbour league", 2026, Sport::baseball, 10, 12, 60, {20, 40, 60}, {}, {}, {}, {}, "", {}};
const PitchRule bare{"Harbour league", 2026, Sport::baseball, 8, 9, 40, {}, {}, {}, {}, {}, "", {}};
const std::vector<PitchRule> rules{ten_to_twelve, bare};
const Date monday = *parse_date("2026-03-09", "date");

} // namespace

TEST_CASE("rest in words carries its arithmetic") {
    CHECK(*describe_rest(ten_to_twelve, monday, 45) ==
          "45 pitches at 10 to 12 years are above 40 and not above 60, so 2 days of rest: 2026-03-10 to "
          "2026-03-11; "
          "pitching again from 2026-03-12.");
    CHECK(*describe_rest(ten_to_twelve, monday, 1) ==
          "1 pitch at 10 to 12 years is not above 20, so 0 days of rest; pitching again from 2026-03-10.");
    CHECK(
        describe_rest(ten_to_twelve, monday, 70)->find("above the daily maximum of 60, so at least 2 days") !=
        std::string::npos);
    CHECK(describe_daily_maximum(ten_to_twelve) ==
          "The Harbour league allows at most 60 pitches in a day at 10 to 12 years.");
}

TEST_CASE("a rule without bands refuses rest, and an age without a row is refused with the ages there are") {
    CHECK(rest_days(bare, 20).refusal().code == RefusalCode::method_does_not_apply);
    CHECK(rest_days(ten_to_twelve, 0).refusal().code == RefusalCode::out_of_range);
    const auto none = pitch_rule_for(rules, "Harbour league", Sport::baseball, 30);
    REQUIRE_FALSE(none);
    CHECK(none.refusal().allowed == "10 to 12 years, 8 to 9 years");
    CHECK(pitch_rule_for(rules, "Harbor league", Sport::baseball, 11).refusal().code ==
          RefusalCode::unknown_name);
    CHECK(pitch_rule_for(rules, "Harbour league", Sport::baseball, 9)->daily_max == 40);
}

TEST_CASE("of two years the newer counts, whichever stands first") {
    PitchRule older = bare;
    older.year = 2019;
    older.daily_max = 30;
    CHECK(pitch_rule_for(std::vector{older, bare}, "Harbour league", Sport::baseball, 9)->daily_max == 40);
    CHECK(pitch_rule_for(std::vector{bare, older}, "Harbour league", Sport::baseball, 9)->daily_max == 40);
}
