#include "inference/random_stream.h"
#include "inference/reference_level.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <string>

using namespace amentum;

namespace {

BodySize adult(double mass) {
    return {24, true, 1.85, mass, false, false};
}

// Log loads that rise by 0.6 for one of log body mass, with a spread of 0.15 around that and an error of
// 0.04.
std::vector<Measured> made_roster(int n, std::uint64_t seed) {
    RandomStream stream(seed);
    std::vector<Measured> roster;
    for (int i = 0; i < n; ++i) {
        const double mass = 85 * std::exp(0.15 * stream.next_normal());
        const double value = std::log(100) + 0.6 * std::log(mass / 85) + 0.15 * stream.next_normal() +
                             0.04 * stream.next_normal();
        roster.push_back({adult(mass), value, 0.0016});
    }
    return roster;
}

} // namespace

TEST_CASE("the usual value follows body mass, and the level is beside it") {
    const auto roster = made_roster(400, 3);
    const auto at = [&](double mass, double value) {
        return estimate_reference_level(roster, adult(mass), DatedValue{0, value, 0.0016});
    };
    const auto usual = at(85, std::log(100));
    CHECK(std::abs(usual.expected - std::log(100)) < 0.03);
    CHECK(std::abs(usual.spread - 0.15) < 0.02);
    CHECK(std::abs(usual.z.mean) < 0.2);
    CHECK(usual.compared_with == 400);
    // 10 % heavier is expected to lift 0.6 x 9.5 % more in logarithm.
    CHECK(std::abs(at(93.5, std::log(100)).expected - usual.expected - 0.6 * std::log(1.1)) < 0.02);
    // Two spreads above, and 7 % of the variance is error: a little less than 2.
    const auto strong = at(85, std::log(100) + 0.30);
    CHECK(strong.z.mean > 1.6);
    CHECK(strong.z.mean < 2.1);
    CHECK(strong.z.variance > 0.05);
    CHECK(strong.z.variance < 0.12);
}

TEST_CASE("an untested athlete is as usual, give or take one") {
    const auto level = estimate_reference_level(made_roster(30, 4), adult(85), std::nullopt);
    CHECK(level.z.mean == 0);
    CHECK(level.z.variance == 1);
    CHECK(level.words.find("not tested") != std::string::npos);
}

TEST_CASE("too few others: the level stays open and the words say so") {
    const auto level =
        estimate_reference_level(made_roster(5, 5), adult(85), DatedValue{0, std::log(200), 0.0016});
    CHECK(level.z.mean == 0);
    CHECK(level.z.variance == 1);
    CHECK(level.compared_with == 5);
    CHECK(level.words.find("too few") != std::string::npos);
}

TEST_CASE("with few others the level is less certain") {
    const auto few =
        estimate_reference_level(made_roster(8, 6), adult(85), DatedValue{0, std::log(110), 0.0016});
    const auto many =
        estimate_reference_level(made_roster(300, 6), adult(85), DatedValue{0, std::log(110), 0.0016});
    CHECK(few.z.variance > many.z.variance);
}

TEST_CASE("below 18 nobody is compared without stature and body mass") {
    auto roster = made_roster(30, 7);
    BodySize young{14, true, std::nullopt, 60, false, false};
    const auto open = estimate_reference_level(roster, young, DatedValue{0, std::log(60), 0.0016});
    CHECK(open.z.variance == 1);
    CHECK(open.compared_with == 0);
    CHECK(open.words.find("below 18") != std::string::npos);
    young.stature_m = 1.65;
    CHECK(estimate_reference_level(roster, young, DatedValue{0, std::log(60), 0.0016}).compared_with == 30);
    roster.push_back({{15, true, std::nullopt, std::nullopt, false, false}, std::log(60), 0.0016});
    CHECK(estimate_reference_level(roster, young, DatedValue{0, std::log(60), 0.0016}).compared_with == 30);
}

TEST_CASE("growth is not a quality: age and size explain a young thrower's velocity") {
    // Velocity of youths rises by 0.67 m/s a year and 0.47 m/s an inch; levels beside that have a spread
    // of 1.5 m/s.
    RandomStream stream(8);
    std::vector<Measured> roster;
    for (int i = 0; i < 200; ++i) {
        const double age = 11 + 7 * stream.next_uniform();
        const double stature = 1.45 + 0.055 * (age - 11) + 0.06 * stream.next_normal();
        const double mass =
            22 * stature * stature * std::exp(0.1 * stream.next_normal()) * (0.75 + 0.015 * age);
        const double value =
            25 + 0.67 * (age - 14) + 0.47 * (stature - 1.6) / 0.0254 + 1.5 * stream.next_normal();
        roster.push_back({{age, true, stature, mass, false, false}, value, 0.1});
    }
    const auto at = [&](double age, double stature, double mass, double value) {
        return estimate_reference_level(roster, {age, true, stature, mass, false, false},
                                        DatedValue{0, value, 0.1});
    };
    const auto small = at(11.5, 1.45, 42, 25 + 0.67 * -2.5 + 0.47 * -0.15 / 0.0254);
    const auto grown = at(17.5, 1.80, 72, 25 + 0.67 * 3.5 + 0.47 * 0.20 / 0.0254);
    CHECK(grown.expected - small.expected > 8); // 4.0 of age and 6.5 of stature by the truth
    CHECK(std::abs(small.z.mean) < 0.5);
    CHECK(std::abs(grown.z.mean) < 0.5);
    CHECK(grown.words.find("age and size come first") != std::string::npos);
}
