// What is said on screens, as a table: the words are ours, the thresholds are the rules in reports/sentences.h.
#include "reports/sentences.h"

#include <doctest/doctest.h>

using namespace amentum;

namespace {

const ShownUnit mph{"mph", 1 / 0.44704, 1};
Date day(int month, int dom) {
    return Date::from(std::chrono::year(2026) / std::chrono::month(month) / std::chrono::day(dom));
}
ChangeWords change(double gained, double lost) {
    return {"throwing velocity", 0.67056,  0.312928, {-0.134112, 0.71526}, gained, lost, 0.26822, 0.98,
            day(1, 5),           day(3, 2)};
}

} // namespace

TEST_CASE("a chance is said in whole per cent, and its ends are not called certain") {
    CHECK(describe_chance(0.714) == "71 %");
    CHECK(describe_chance(0.0004) == "under 1 %");
    CHECK(describe_chance(0.9999) == "over 99 %");
}

TEST_CASE("no verdict while the chance lies between 10 and 90 per cent") {
    CHECK(describe_change(change(0.53, 0.04), mph).starts_with("Cannot tell yet"));
    CHECK(describe_change(change(0.899, 0.0), mph).starts_with("Cannot tell yet"));
    CHECK(describe_change(change(0.93, 0.0), mph).starts_with("More throwing velocity than before"));
    CHECK(describe_change(change(0.0, 0.95), mph).starts_with("Less throwing velocity than before"));
}

TEST_CASE("below 18 a change is measured against growth, and the sentence says so") {
    ChangeWords lost = change(0.0, 0.95);
    lost.growth_taken_out = true;
    CHECK(describe_change(lost, mph).starts_with("Less throwing velocity than growth alone usually brings"));
    CHECK(describe_change(lost, mph).find("beyond growth") != std::string::npos);
}

TEST_CASE("an estimate is never said without its interval and unit") {
    CHECK(describe_estimate(36.6126, {36.1, 37.1}, mph) == "81.9 mph (80 %: 80.8 to 83.0)");
    CHECK(describe_difference(0.312928, {-0.134112, 0.71526}, mph) == "+0.7 mph (80 %: -0.3 to +1.6)");
}

TEST_CASE("no sentence says that one thing causes another") {
    for (const double p : {0.0, 0.5, 0.95}) {
        CHECK(describe_change(change(p, 0), mph).find("cause") == std::string::npos);
        CHECK(describe_change(change(0, p), mph).find("cause") == std::string::npos);
    }
}

TEST_CASE("an empty throw log is said to be empty, not zero days") {
    CHECK(describe_hard_throw(std::nullopt, std::nullopt, "") == "no hard throw is recorded");
    CHECK(describe_hard_throw(1, day(3, 2), "game") == "last hard throw 1 day ago (2026-03-02, game)");
}
