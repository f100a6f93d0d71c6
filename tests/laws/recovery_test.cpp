// A roster made up with known truth: does the band hold the truth as often as it says, and are the variances
// found again?
//
// 400 athletes, 4 to 10 test days 5 to 60 days apart, walk and errors as the model has them; fixed seed. The
// share of bands that hold the truth has an SD of about 1 %, because the days of one athlete go together.
#include "inference/random_stream.h"
#include "inference/roster_variances.h"
#include "values/interval.h"

#include <doctest/doctest.h>

#include <cmath>
#include <vector>

using namespace amentum;

namespace {

constexpr double error_variance = 0.64, drift = 0.01; // of one test; a day

struct Truth {
    std::vector<DatedValue> tests;
    std::vector<double> level; // true, on the day of each test
};

std::vector<Truth> made_roster(std::uint64_t seed, int athletes) {
    RandomStream stream(seed);
    std::vector<Truth> roster;
    for (int i = 0; i < athletes; ++i) {
        Truth truth;
        double level = 80 + 4 * stream.next_normal();
        int day = 0;
        const int n = 4 + static_cast<int>(7 * stream.next_uniform());
        for (int k = 0; k < n; ++k) {
            truth.level.push_back(level);
            truth.tests.push_back(
                {day, level + std::sqrt(error_variance) * stream.next_normal(), error_variance});
            const int step = 5 + static_cast<int>(56 * stream.next_uniform());
            day += step;
            level += std::sqrt(drift * step) * stream.next_normal();
        }
        roster.push_back(truth);
    }
    return roster;
}

bool holds(const StateOnDay& state, double truth) {
    return std::abs(state.mean - truth) <= z80 * std::sqrt(state.variance);
}

// Shares of 80 % bands that hold the truth: of smoothed days, and of the day left out between two tests.
struct Coverage {
    double smoothed;
    double between;
};

Coverage measure_coverage(const std::vector<Truth>& roster, double factor, double walk) {
    double held = 0, all = 0, held_between = 0, between = 0;
    for (const auto& truth : roster) {
        auto tests = truth.tests;
        for (auto& test : tests)
            test.variance *= factor;
        const auto trajectory = estimate_trajectory(tests, walk);
        for (std::size_t k = 0; k < tests.size(); ++k)
            held += holds(trajectory.points[k].smoothed, truth.level[k]), ++all;
        auto fewer = tests;
        fewer.erase(fewer.begin() + 2);
        held_between += holds(estimate_trajectory(fewer, walk).state_on(tests[2].day), truth.level[2]),
            ++between;
    }
    return {held / all, held_between / between};
}

} // namespace

TEST_CASE("with the true variances the 80 % band holds the truth 75 to 85 % of the time") {
    const auto coverage = measure_coverage(made_roster(11, 400), 1, drift);
    CAPTURE(coverage.smoothed);
    CAPTURE(coverage.between);
    CHECK(coverage.smoothed > 0.75);
    CHECK(coverage.smoothed < 0.85);
    CHECK(coverage.between > 0.75);
    CHECK(coverage.between < 0.85);
}

TEST_CASE("a wrong published error is found out, and the band holds again") {
    auto roster = made_roster(12, 400);
    std::vector<std::vector<DatedValue>> series;
    for (auto& truth : roster) {
        for (auto& test : truth.tests)
            test.variance = error_variance / 2; // published half of what it is
        series.push_back(truth.tests);
    }
    const auto found = estimate_roster_variances(series);
    CAPTURE(found.error_factor);
    CAPTURE(found.drift);
    CHECK(found.athletes == 400);
    CHECK(found.error_factor > 1.8);
    CHECK(found.error_factor < 2.2);
    CHECK(found.drift > 0.009);
    CHECK(found.drift < 0.011);
    const auto coverage = measure_coverage(roster, found.error_factor, found.drift);
    CHECK(coverage.smoothed > 0.75);
    CHECK(coverage.smoothed < 0.85);
}

TEST_CASE("two tests of one athlete leave the published error nearly as it was") {
    const std::vector<std::vector<DatedValue>> few{{{0, 80, 0.64}, {30, 80.1, 0.64}}};
    const auto found = estimate_roster_variances(few);
    CHECK(found.error_factor > 0.7);
    CHECK(found.error_factor < 1.1);
    const auto none = estimate_roster_variances(std::vector<std::vector<DatedValue>>{{{0, 80, 0.64}}});
    CHECK(std::abs(none.error_factor - 1) < 1e-4);
    CHECK(none.athletes == 0);
}
