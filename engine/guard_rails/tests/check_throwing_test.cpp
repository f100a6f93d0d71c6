// Throw logs broken on purpose, under an invented rule with round numbers.
#include "guard_rails/check_throwing.h"

#include <doctest/doctest.h>

#include <fstream>

using namespace amentum;

namespace {

Date day(int d) {
    return *parse_date("2026-03-02", "date") + d;
} // a Monday, and days after it

const std::vector<PitchRule> rules{
    {"Harbour league",
     2026,
     Sport::baseball,
     10,
     14,
     60,
     {20, 40, 60},
     {},
     {},
     2,
     {},
     "",
     {"common_practice"}},
    {"Harbour softball", 2026, Sport::softball, 10, 14, 80, {}, {}, 40, {}, {}, "", {"common_practice"}}};

Athlete pitcher(Sport sport = Sport::baseball) {
    return {AthleteId{"ira"},
            "Ira",
            *parse_date("2013-01-01", "date"),
            Sex::male,
            Hand::left,
            sport,
            Role::pitcher,
            Level::youth,
            {},
            {},
            {},
            {},
            KitId{"k"},
            ""};
}

ThrowEntry game(int d, int count) {
    return {AthleteId{"ira"}, day(d), ThrowSetting::game, count, {}, {}, {}, {}, {}, {}, {}, ""};
}

ThrowEntry sore(int d, std::optional<double> before, std::optional<double> after,
                std::optional<double> next_day) {
    return {AthleteId{"ira"}, day(d), ThrowSetting::catch_play, 30, {}, {}, {}, {}, before, after,
            next_day,         ""};
}

std::vector<std::string> codes(const std::vector<ThrowEntry>& log, int today,
                               const Athlete& athlete = pitcher()) {
    std::vector<std::string> all;
    const CareRecord no_pain;
    for (const auto& finding : check_throwing({athlete, log, rules, {}, no_pain, day(today)}))
        all.push_back(finding.code);
    return all;
}

using Codes = std::vector<std::string>;

} // namespace

TEST_CASE("a log within the rules gives no finding") {
    CHECK(codes({}, 0) == Codes{});
    CHECK(codes({game(0, 40), game(2, 20), game(3, 20)}, 5) == Codes{});
}

TEST_CASE("a rest not yet over stops; once over it is silent") {
    CHECK(codes({game(0, 45)}, 1) == Codes{"rest_not_over"});
    CHECK(codes({game(0, 45)}, 2) == Codes{"rest_not_over"});
    CHECK(codes({game(0, 45)}, 3) == Codes{});
    const auto ira = pitcher();
    const std::vector log{game(0, 45)};
    const CareRecord no_pain;
    const auto findings = check_throwing({ira, log, rules, {}, no_pain, day(1)});
    REQUIRE(findings.size() == 1);
    CHECK(findings[0].severity == Severity::stops);
    CHECK(findings[0].what_to_do == "No pitching in games before 2026-03-05.");
    CHECK(findings[0].source == "Harbour league 2026 [common_practice]");
}

TEST_CASE("broken rules of the last 28 days warn") {
    CHECK(codes({game(0, 61)}, 5) == Codes{"daily_maximum"});
    CHECK(codes({game(0, 45), game(2, 20)}, 5) == Codes{"rest_too_short"});
    CHECK(codes({game(0, 20), game(1, 20), game(2, 20)}, 5) == Codes{"days_running"});
    CHECK(codes({game(0, 20), game(1, 20)}, 2) == Codes{"days_running_today"});
    CHECK(codes({game(0, 61)}, 28) == Codes{"daily_maximum"});
    CHECK(codes({game(0, 61)}, 29) == Codes{});
}

TEST_CASE("softball: a limit on the third day running, no bands of rest") {
    const auto her = pitcher(Sport::softball);
    CHECK(codes({game(0, 80), game(1, 80), game(2, 40)}, 3, her) == Codes{});
    CHECK(codes({game(0, 80), game(1, 80), game(2, 41)}, 3, her) == Codes{"third_day_maximum"});
}

TEST_CASE("pitches in games count whatever the role, at the ages the rule has") {
    auto fielder = pitcher();
    fielder.role = Role::fielder;
    CHECK(codes({game(0, 61)}, 1, fielder) == Codes{"daily_maximum", "rest_not_over"});
    auto adult = pitcher();
    adult.birth_date = *parse_date("1996-01-01", "date");
    CHECK(codes({game(0, 61)}, 1, adult) == Codes{});
}

TEST_CASE("soreness over more than 72 hours stops and refers") {
    CHECK(codes({sore(0, 3, {}, {}), sore(3, 4, {}, {})}, 4) == Codes{}); // 72 h and not more
    CHECK(codes({sore(0, 3, {}, {}), sore(2, 3, {}, {}), sore(4, 4, {}, {})}, 4) ==
          Codes{"soreness_not_settling"});
    CHECK(codes({sore(0, 3, {}, {}), sore(2, 1, {}, {}), sore(4, 4, {}, {})}, 4) ==
          Codes{});                                                       // it settled between
    CHECK(codes({sore(0, 3, {}, {}), sore(4, 4, {}, {})}, 4) == Codes{}); // nobody looked in between
    CHECK(codes({sore(0, {}, 6, {}), sore(2, {}, 6, {}), sore(4, {}, 6, {})}, 4) ==
          Codes{}); // right after only
    CHECK(codes({sore(0, 3, {}, {}), sore(2, 3, {}, {}), sore(4, 4, {}, {})}, 12) == Codes{}); // history
}

TEST_CASE("soreness that rises over three sessions stops and refers") {
    CHECK(codes({sore(0, {}, 1, {}), sore(2, {}, 2, {}), sore(4, {}, 3, {})}, 5) ==
          Codes{"soreness_not_settling"});
    CHECK(codes({sore(0, {}, 1, {}), sore(2, {}, 3, {}), sore(4, {}, 3, {})}, 5) == Codes{});
    CHECK(codes({sore(0, {}, 0, {}), sore(2, {}, 1, {}), sore(4, {}, 2, {})}, 5) == Codes{}); // still slight
}

TEST_CASE("slower by 5 % and sore stops and refers; slower alone does not") {
    std::vector<ThrowEntry> log;
    for (const int d : {0, 3, 6}) {
        log.push_back(game(d, 10));
        log.back().speed = Speed::miles_per_hour(70);
    }
    log.push_back(game(9, 10));
    log.back().speed = Speed::miles_per_hour(66); // 5.7 % below 70
    CHECK(codes(log, 10) == Codes{});
    log.back().soreness_after = 4;
    CHECK(codes(log, 10) == Codes{"losing_speed_with_soreness"});
    log.back().speed = Speed::miles_per_hour(67); // 4.3 %
    CHECK(codes(log, 10) == Codes{});
}

TEST_CASE("the codes of soreness are signs of the shipped list") {
    std::ifstream file(std::string(AMENTUM_SOURCE_DIR) + "/data/stop_and_refer.csv");
    std::string text, line;
    while (std::getline(file, line))
        text += "\n" + line;
    CHECK(text.find("\nsoreness_not_settling,") != std::string::npos);
    CHECK(text.find("\nlosing_speed_with_soreness,") != std::string::npos);
}
