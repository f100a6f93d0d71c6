// The tables of data/pitch_rules.csv against the published guidelines: USA Baseball and Major League
// Baseball, pitching guidelines for youth and adolescents (daily limits, rest, innings); the softball
// guidance of the American Orthopaedic Society for Sports Medicine. The numbers below were read there; the
// dates are counted on a calendar.
#include "throwing_workload/pitch_rule.h"

#include <doctest/doctest.h>

#include <fstream>
#include <sstream>

using namespace amentum;

namespace {

const std::string national = "United States baseball guideline";

std::optional<int> number(const std::string& text) {
    return text.empty() ? std::nullopt : std::optional(std::stoi(text));
}

// A reader for this one file, whose fields hold no quotes, apart from the program's own.
std::vector<PitchRule> read_rules() {
    std::ifstream file(std::string(AMENTUM_SOURCE_DIR) + "/data/pitch_rules.csv");
    std::vector<PitchRule> rules;
    for (std::string line; std::getline(file, line);) {
        if (line.starts_with('#') || line.starts_with("organisation,"))
            continue;
        std::vector<std::string> f;
        std::istringstream fields(line);
        for (std::string field; std::getline(fields, field, ',');)
            f.push_back(field);
        REQUIRE(f.size() == 26);
        PitchRule rule{f[0],
                       std::stoi(f[1]),
                       *from_word<Sport>(f[2]),
                       std::stoi(f[3]),
                       std::stoi(f[4]),
                       std::stoi(f[5]),
                       {},
                       number(f[12]),
                       number(f[13]),
                       number(f[14]),
                       number(f[15]),
                       f[24],
                       {f[25]}};
        for (std::size_t rest = 0; rest < 6; ++rest)
            rule.rest_to[rest] = number(f[6 + rest]);
        rules.push_back(rule);
    }
    return rules;
}

const std::vector<PitchRule>& rules() {
    static const std::vector<PitchRule> held = read_rules();
    return held;
}

PitchRule baseball(int age) {
    return *pitch_rule_for(rules(), national, Sport::baseball, age);
}
PitchRule softball(int age) {
    return *pitch_rule_for(rules(), "Softball clinical guidance", Sport::softball, age);
}

std::vector<int> rest(int age, const std::vector<int>& counts) {
    std::vector<int> days;
    for (const int pitches : counts)
        days.push_back(*rest_days(baseball(age), pitches));
    return days;
}

} // namespace

TEST_CASE("age 13 to 14: 40 pitches on Monday, next on Thursday; 66, next on Saturday; 20, next day") {
    const Date monday = *parse_date("2026-03-09", "date");
    REQUIRE(monday.iso_weekday() == 1);
    CHECK(next_day_allowed(baseball(13), monday, 40)->iso_weekday() == 4);
    CHECK(next_day_allowed(baseball(14), monday, 66)->iso_weekday() == 6);
    CHECK(next_day_allowed(baseball(14), monday, 20)->iso_weekday() == 2);
}

TEST_CASE("daily maximum by age") {
    CHECK(baseball(11).daily_max == 85);
    CHECK(baseball(12).daily_max == 85);
    CHECK(baseball(17).daily_max == 105);
    CHECK(baseball(18).daily_max == 105);
    CHECK(baseball(7).daily_max == 50);
    CHECK(baseball(8).daily_max == 50);
}

TEST_CASE("rest bands at their edges") {
    CHECK(rest(15, {30, 31, 45, 46, 60, 61, 75, 76}) == std::vector{0, 1, 1, 2, 2, 3, 3, 4});
    CHECK(rest(9, {20, 21, 35, 36, 50, 51, 65, 66}) == std::vector{0, 1, 1, 2, 2, 3, 3, 4});
}

TEST_CASE("innings in twelve months: 60 to the age of 8, 80 to 12, 100 to 18") {
    CHECK(baseball(8).yearly_innings == 60);
    CHECK(baseball(12).yearly_innings == 80);
    for (const int age : {13, 14, 15, 16, 17, 18})
        CHECK(baseball(age).yearly_innings == 100);
}

TEST_CASE("softball at 13 to 14: 115 on each of the first two days, 80 on the third, 80 a game") {
    CHECK(softball(13).daily_max == 115);
    CHECK(softball(14).third_day_max == 80);
    CHECK(softball(14).game_max == 80);
    CHECK(rest_days(softball(14), 50).refusal().code == RefusalCode::method_does_not_apply);
}

TEST_CASE("every row of the table is whole: bands rise, end at the daily maximum, and ages do not overlap") {
    REQUIRE(rules().size() == 17);
    for (const auto& rule : rules()) {
        CAPTURE(rule.organisation);
        CAPTURE(rule.age_low);
        int last = 0;
        for (const auto& to : rule.rest_to) {
            if (!to)
                continue;
            CHECK(*to > last);
            last = *to;
        }
        CHECK((last == 0 || last == rule.daily_max));
        for (const auto& other : rules())
            if (&other != &rule && other.organisation == rule.organisation && other.sport == rule.sport)
                CHECK((other.age_high < rule.age_low || other.age_low > rule.age_high));
    }
}
