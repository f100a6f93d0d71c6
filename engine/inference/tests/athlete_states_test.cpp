// Where an athlete stands by the joint model's fit, against the conditional normal distribution of all readings at once.
#include "inference/athlete_states.h"
#include "inference/inside/joint_parameters.h"

#include <doctest/doctest.h>

#include <array>
#include <cmath>

using namespace amentum;
using Eigen::Index;
using Eigen::MatrixXd;
using Eigen::VectorXd;

namespace {

constexpr std::array unit{2.0, 0.5}, centre{30.0, 4.0};
const JointShape shape{2, 1, 1, {0}};

// Two qualities, sessions of the first; the numbers are made up.
RosterMode some_mode() {
    RosterMode mode{2,
                    1,
                    1,
                    {centre.begin(), centre.end()},
                    {unit.begin(), unit.end()},
                    {},
                    {},
                    {},
                    {0},
                    {{0.7, 0.3}},
                    {0.8, 0}};
    mode.phi = {
        0.1,           -0.2,           0.3,           0.2, 0.05,          0.02,          std::log(0.3),
        0.6,           std::log(0.02), std::log(0.9), 0.5, std::log(0.4), std::log(0.1), std::log(0.2),
        std::log(0.16)};
    return mode;
}

const RosterAthlete athlete{
    {0.5},
    {{10, {{0, 31.0, 1, 0}, {1, 4.2}}}, {40, {{1, 4.4, 0.5}}}, {100, {{0, 33.0, 1, 5}, {1, 4.1}}}},
    {1.5}};

// States of both qualities on each of `days`, given the readings up to `until`, by conditioning a normal vector.
struct Dense {
    VectorXd mean;
    MatrixXd variance;
};
Dense conditioned(const std::vector<int>& days, int until) {
    const RosterMode mode = some_mode();
    const auto parts = joint_parameters(shape, Eigen::Map<const VectorXd>(mode.phi.data(), shape.size()));
    const MatrixXd S = parts.between.whole(), Q = parts.within.whole();
    const int start = athlete.days.front().day;
    struct Number {
        int day, quality;
        double value, error;
    };
    std::vector<Number> all;
    for (const int day : days)
        for (int k = 0; k < 2; ++k)
            all.push_back({day, k, 0, 0});
    const auto asked = static_cast<Index>(all.size());
    for (const auto& day : athlete.days)
        for (const auto& r : day.readings) {
            const auto k = static_cast<std::size_t>(r.quality);
            const double shift = r.session == 0 ? 0.7 : 0, doubt = r.session == 0   ? 0.3
                                                                   : r.session == 5 ? 0.8
                                                                                    : 0;
            if (day.day <= until)
                all.push_back({day.day, r.quality, (r.value - shift - centre[k]) / unit[k],
                               parts.error[r.quality] * r.share + std::pow(doubt / unit[k], 2)});
        }
    const auto n = static_cast<Index>(all.size());
    VectorXd expected(n), values(n);
    MatrixXd V(n, n);
    for (Index i = 0; i < n; ++i) {
        const auto& a = all[static_cast<std::size_t>(i)];
        const double time = (a.day - start) / 30.0;
        expected[i] = parts.mean[a.quality] + 0.5 * parts.covariate_effect(a.quality, 0) +
                      1.5 * time * parts.growth_effect(a.quality, 0);
        values[i] = a.value;
        for (Index j = 0; j < n; ++j) {
            const auto& b = all[static_cast<std::size_t>(j)];
            V(i, j) =
                S(a.quality, b.quality) + Q(a.quality, b.quality) * (std::min(a.day, b.day) - start) / 30.0;
        }
        V(i, i) += a.error;
    }
    const Index seen = n - asked;
    const MatrixXd gain = V.topRightCorner(asked, seen) * V.bottomRightCorner(seen, seen).inverse();
    return {expected.head(asked) + gain * (values - expected).tail(seen),
            V.topLeftCorner(asked, asked) - gain * V.bottomLeftCorner(seen, asked)};
}

void check(const StateOnDay& state, const Dense& dense, Index at, std::size_t k) {
    CHECK(state.mean == doctest::Approx(centre[k] + unit[k] * dense.mean[at]).epsilon(1e-12));
    CHECK(state.variance == doctest::Approx(unit[k] * unit[k] * dense.variance(at, at)).epsilon(1e-10));
}

} // namespace

TEST_CASE("smoothed states, their covariances and changes are the conditional normal's") {
    const std::vector<int> days{10, 25, 40, 100, 160};
    const int also[] = {25, 160};
    const AthleteStates states(some_mode(), athlete, also);
    REQUIRE(std::vector<int>(states.days().begin(), states.days().end()) == days);
    const Dense dense = conditioned(days, 1000);
    for (std::size_t t = 0; t < days.size(); ++t)
        for (int k = 0; k < 2; ++k)
            check(states.smoothed(days[t], k), dense, static_cast<Index>(2 * t) + k,
                  static_cast<std::size_t>(k));
    CHECK(states.covariance(10, 100, 0) == doctest::Approx(4 * dense.variance(0, 6)).epsilon(1e-10));
    CHECK(states.covariance(25, 160, 1) == doctest::Approx(0.25 * dense.variance(3, 9)).epsilon(1e-10));
    CHECK(states.covariance_on(40, 0, 1) == doctest::Approx(dense.variance(4, 5)).epsilon(1e-10));
    const StateOnDay change = states.change(0, 10, 100);
    CHECK(change.mean == doctest::Approx(2 * (dense.mean[6] - dense.mean[0])).epsilon(1e-12));
    CHECK(change.variance ==
          doctest::Approx(4 * (dense.variance(0, 0) + dense.variance(6, 6) - 2 * dense.variance(0, 6)))
              .epsilon(1e-10));
}

TEST_CASE("what was known on a day, and a forecast, rest on the readings up to then alone") {
    const AthleteStates states(some_mode(), athlete);
    check(states.known_then(40, 0), conditioned({40}, 40), 0, 0);
    const StateForecast ahead = forecast_state(some_mode(), athlete, 40, 100, 0);
    check(ahead.state, conditioned({100}, 40), 0, 0);
    // A reading's error 0.1 in units of 2, its session's spread 0.8.
    CHECK(ahead.reading_variance == doctest::Approx(ahead.state.variance + 0.1 * 4 + 0.64).epsilon(1e-12));
}

TEST_CASE("a reading far from its forecast is flagged and stays in") {
    RosterAthlete odd = athlete;
    odd.days.back().readings.back().value = 9; // 4.4 before, spread 0.5
    const AthleteStates states(some_mode(), odd);
    REQUIRE(states.surprises().size() == 5);
    for (std::size_t i = 0; i < 4; ++i)
        CHECK_FALSE(states.surprises()[i].far_from_expected);
    CHECK(states.surprises()[4].far_from_expected);
    CHECK(states.surprises()[4].value == 9);
    CHECK(states.smoothed(100, 1).mean > AthleteStates(some_mode(), athlete).smoothed(100, 1).mean + 0.5);
}
