// The rules of verdicts as a table. Chances: Phi(1.2816) = 0.9000, Phi(1) = 0.8413 [AbramowitzStegun, table 26.1].
#include "reports/check_claims.h"
#include "reports/verdicts.h"

#include <doctest/doctest.h>

using namespace amentum;

namespace {

const ShownUnit mph{"mph", 1 / 0.44704, 1};

} // namespace

TEST_CASE("a direction is said from nine in ten on, and never before") {
    struct Row {
        double more, less;
        EffectDirection said;
    };
    const Row rows[] = {
        {0.90, 0.00, EffectDirection::more},        {0.8999, 0.05, EffectDirection::cannot_tell},
        {0.50, 0.50, EffectDirection::cannot_tell}, {0.05, 0.8999, EffectDirection::cannot_tell},
        {0.00, 0.90, EffectDirection::less},        {1.00, 0.00, EffectDirection::more},
        {0.00, 0.00, EffectDirection::cannot_tell}, // surely small is not a direction
    };
    for (const auto& row : rows) {
        CAPTURE(row.more);
        CAPTURE(row.less);
        CHECK(verdict_of(row.more, row.less) == row.said);
    }
    CHECK(verdict_of(Estimate{1.0, 1.0}) == EffectDirection::cannot_tell);
    CHECK(verdict_of(Estimate{1.281, 1.0}) == EffectDirection::cannot_tell);
    CHECK(verdict_of(Estimate{1.282, 1.0}) == EffectDirection::more);
    CHECK(verdict_of(Estimate{-0.641, 0.5}) == EffectDirection::less);
}

TEST_CASE("whose word it is: below three tenths learned, the literature's") {
    CHECK(describe_whose_word(0.0) ==
          "that is the literature's word more than these throwers': 0 % is their own");
    CHECK(describe_whose_word(0.29).starts_with("that is the literature's word"));
    CHECK(describe_whose_word(0.30) == "30 % of that is these throwers' own records");
    CHECK(describe_whose_word(0.77) == "77 % of that is these throwers' own records");
}

TEST_CASE("beside a forecast: number, interval and direction in one sentence") {
    CHECK(describe_beside_forecast("Throwing velocity", 0.938784, {0.357632, 1.519936}, EffectDirection::more,
                                   mph) ==
          "Throwing velocity: +2.1 mph (80 %: +0.8 to +3.4) beside the forecast without the block: more than "
          "forecast.");
    CHECK(describe_beside_forecast("Throwing velocity", 0.1, {-0.5, 0.7}, EffectDirection::cannot_tell, mph)
              .ends_with("cannot tell whether it differs from the forecast."));
}

TEST_CASE("without a comparison group that is said, and what it leaves open") {
    CHECK(describe_no_comparison_group(0, 3).starts_with(
        "No comparison group: nobody without a block was tested"));
    CHECK(describe_no_comparison_group(1, 3).find("only one other without a block was") != std::string::npos);
    CHECK(describe_no_comparison_group(2, 3).find("only 2 others without a block were") != std::string::npos);
    CHECK(describe_no_comparison_group(0, 3).find("season") != std::string::npos);
}

TEST_CASE("claims of cause are found, denials are not") {
    struct Row {
        const char* text;
        std::size_t found;
    };
    const Row rows[] = {
        {"Lifting causes speed.", 1},
        {"The gain was caused by the block.", 1},
        {"This proves that it worked.", 1},
        {"Velocity clearly rose.", 1},
        {"A clear gain of 2 mph.", 1},
        {"Speed goes with strength. Lifting causes speed. It never causes pain.", 1},
        {"Goes with is not causes: growth moves several things at once.", 0},
        {"It would be near whatever happened: it proves nothing.", 0},
        {"**What it cannot tell.** Causes. Growth is in the model.", 0},
        {"There was no clear gain.", 0},
        {"Clear the list", 0},
        {"A session moved clear of a start.", 0},
        {"because of growth", 0},
    };
    for (const auto& row : rows) {
        CAPTURE(row.text);
        CHECK(check_claims(row.text).size() == row.found);
    }
    CHECK(check_claims("Lifting causes speed. It never causes pain.").front() == "Lifting causes speed.");
}
