// What must hold for every trajectory, whatever the numbers: 300 random series of a fixed seed.
#include "inference/random_stream.h"
#include "inference/roster_variances.h"
#include "inference/trajectory.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <vector>

using namespace amentum;

namespace {

constexpr int cases = 300;

struct Drawn {
    std::vector<DatedValue> values;
    double drift;
};

int whole(RandomStream& stream, int low, int high) {
    return low + static_cast<int>(stream.next_uniform() * (high - low + 1));
}

Drawn drawn_series(RandomStream& stream) {
    Drawn out{{}, std::exp(3 * stream.next_normal() - 3)};
    int day = whole(stream, -500, 500);
    const int n = whole(stream, 1, 15);
    for (int i = 0; i < n; ++i) {
        out.values.push_back({day, 50 + 10 * stream.next_normal(), std::exp(2 * stream.next_normal())});
        day += whole(stream, 0, 90);
    }
    return out;
}

bool same(double a, double b) {
    return std::abs(a - b) <= 1e-9 * std::max({1.0, std::abs(a), std::abs(b)});
}

std::vector<int> days_around(const Drawn& drawn) {
    std::vector<int> days;
    for (int day = drawn.values.front().day - 40; day <= drawn.values.back().day + 40; day += 7)
        days.push_back(day);
    return days;
}

} // namespace

TEST_CASE("shifting all values shifts the trajectory, and nothing else") {
    RandomStream stream(1);
    for (int i = 0; i < cases; ++i) {
        const auto drawn = drawn_series(stream);
        auto shifted = drawn.values;
        for (auto& value : shifted)
            value.value += 12.5, value.day += 1000;
        const auto a = estimate_trajectory(drawn.values, drawn.drift),
                   b = estimate_trajectory(shifted, drawn.drift);
        CHECK(same(a.log_likelihood, b.log_likelihood));
        for (const int day : days_around(drawn)) {
            CHECK(same(a.state_on(day).mean + 12.5, b.state_on(day + 1000).mean));
            CHECK(same(a.state_on(day).variance, b.state_on(day + 1000).variance));
        }
    }
}

TEST_CASE("another unit scales the trajectory") {
    RandomStream stream(2);
    for (int i = 0; i < cases; ++i) {
        const auto drawn = drawn_series(stream);
        const double c = 0.45359237;
        auto scaled = drawn.values;
        for (auto& value : scaled)
            value.value *= c, value.variance *= c * c;
        const auto a = estimate_trajectory(drawn.values, drawn.drift),
                   b = estimate_trajectory(scaled, drawn.drift * c * c);
        for (const int day : days_around(drawn)) {
            CHECK(same(a.state_on(day).mean * c, b.state_on(day).mean));
            CHECK(same(a.state_on(day).variance * c * c, b.state_on(day).variance));
        }
    }
}

TEST_CASE("one test more never widens the band, on any day") {
    RandomStream stream(3);
    for (int i = 0; i < cases; ++i) {
        const auto drawn = drawn_series(stream);
        auto more = drawn.values;
        const DatedValue extra{whole(stream, drawn.values.front().day, drawn.values.back().day + 60),
                               50 + 10 * stream.next_normal(), std::exp(2 * stream.next_normal())};
        more.insert(std::upper_bound(more.begin(), more.end(), extra,
                                     [](const auto& a, const auto& b) { return a.day < b.day; }),
                    extra);
        const auto a = estimate_trajectory(drawn.values, drawn.drift),
                   b = estimate_trajectory(more, drawn.drift);
        for (const int day : days_around(drawn))
            CHECK(b.state_on(day).variance <= a.state_on(day).variance * (1 + 1e-9));
    }
}

TEST_CASE("time can be read backwards: a flat start has no direction") {
    RandomStream stream(4);
    for (int i = 0; i < cases; ++i) {
        const auto drawn = drawn_series(stream);
        auto reversed = drawn.values;
        std::reverse(reversed.begin(), reversed.end());
        for (auto& value : reversed)
            value.day = -value.day;
        const auto a = estimate_trajectory(drawn.values, drawn.drift),
                   b = estimate_trajectory(reversed, drawn.drift);
        CHECK(same(a.log_likelihood, b.log_likelihood));
        for (const int day : days_around(drawn)) {
            CHECK(same(a.state_on(day).mean, b.state_on(-day).mean));
            CHECK(same(a.state_on(day).variance, b.state_on(-day).variance));
        }
    }
}

TEST_CASE("without drift the level is the weighted mean") {
    RandomStream stream(5);
    for (int i = 0; i < cases; ++i) {
        const auto drawn = drawn_series(stream);
        double weights = 0, sum = 0;
        for (const auto& value : drawn.values)
            weights += 1 / value.variance, sum += value.value / value.variance;
        const auto level = estimate_trajectory(drawn.values, 0).state_on(drawn.values.front().day);
        CHECK(same(level.mean, sum / weights));
        CHECK(same(level.variance, 1 / weights));
    }
}

TEST_CASE("a far value is flagged and still counts") {
    std::vector<DatedValue> values{{0, 80, 1}, {10, 80.5, 1}, {20, 79.5, 1}, {30, 95, 1}};
    const auto flagged = estimate_trajectory(values, 0.01);
    CHECK(flagged.points.back().far_from_expected);
    CHECK(!flagged.points[1].far_from_expected);
    CHECK(flagged.points.back().smoothed.mean > 82);
}

TEST_CASE("the order of the athletes changes nothing in the roster's variances") {
    RandomStream stream(6);
    std::vector<std::vector<DatedValue>> roster;
    for (int i = 0; i < 20; ++i)
        roster.push_back(drawn_series(stream).values);
    const auto first = estimate_roster_variances(roster);
    std::reverse(roster.begin(), roster.end());
    std::swap(roster[3], roster[11]);
    const auto second = estimate_roster_variances(roster);
    CHECK(first.error_factor == second.error_factor);
    CHECK(first.drift == second.drift);
    CHECK(first.log_likelihood == second.log_likelihood);
}
