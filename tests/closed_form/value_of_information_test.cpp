// Choosing between uncertain gains, moving back to the mean, scoring a forecast: closed forms.
//
// Two levers [Clark1961], N(1.2, 0.5^2) and N(0.8, 0.9^2), r = 0.3: s = sqrt(0.25 + 0.81 - 0.27) = 0.888819,
//   d = 0.4 / s = 0.450036, P = Phi(d) = 0.673657, E max = 1.389901, EVPI = E max - 1.2 = 0.189901.
// Regression to the mean [Barnett2005], mean 80, between 4, error 1.2: reliability 16 / 17.44 = 0.917431;
// first test 74:
//   0.082569 x 6 = 0.495413; all below 76: 0.514283.
// CRPS of N(0, 1) [Gneiting2007]: y = 0: (sqrt 2 - 1) / sqrt pi = 0.2336949773; y = 1.5: 0.9944240040.
#include "inference/forecast_score.h"
#include "inference/normal_quantile.h"
#include "inference/random_stream.h"
#include "inference/regression_to_the_mean.h"
#include "inference/value_of_information.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

using namespace amentum;

namespace {

bool near(double value, double expected, double tolerance) {
    return std::abs(value - expected) < tolerance;
}

} // namespace

TEST_CASE("two levers in closed form") {
    const auto levers = compare_two_levers({1.2, 0.5}, {0.8, 0.9}, 0.3);
    CHECK(near(levers.chance_first_best, 0.673657, 1e-6));
    CHECK(near(levers.expected_best, 1.389901, 1e-6));
    CHECK(near(levers.value_of_knowing, 0.189901, 1e-6));
}

TEST_CASE("two levers by drawing them: within the error of the draws") {
    RandomStream stream(20260314);
    const int n = 200000;
    double first = 0, best = 0;
    for (int i = 0; i < n; ++i) {
        const double u = stream.next_normal(), v = stream.next_normal();
        const double a = 1.2 + 0.5 * u, b = 0.8 + 0.9 * (0.3 * u + std::sqrt(1 - 0.09) * v);
        first += a > b ? 1.0 / n : 0.0;
        best += std::max(a, b) / n;
    }
    CHECK(near(first, 0.673657, 4 * std::sqrt(0.6737 * 0.3263 / n)));
    CHECK(near(best, 1.389901, 4 * 0.6 / std::sqrt(n))); // the larger of the two has an SD below 0.6
}

TEST_CASE("moving back to the mean") {
    const TestedGroup group{80, 4, 1.2};
    CHECK(near(reliability_of(group), 0.917431, 1e-6));
    CHECK(near(expected_return(group, 74), 0.495413, 1e-6));
    CHECK(near(expected_return_of_those_below(group, 76), 0.514283, 1e-6));
}

TEST_CASE("score of a normal forecast") {
    CHECK(near(forecast_score({0, 1}, 0), 0.2336949773, 1e-9));
    CHECK(near(forecast_score({0, 1}, 1.5), 0.9944240040, 1e-9));
    CHECK(near(forecast_score({10, 2}, 13), 2 * 0.9944240040, 1e-9)); // it scales
}

TEST_CASE("quantiles of the normal distribution, as R 4.2.2 prints qnorm") {
    CHECK(near(normal_quantile(1e-10), -6.3613409024040557, 1e-13));
    CHECK(near(normal_quantile(0.001), -3.0902323061678132, 1e-14));
    CHECK(near(normal_quantile(0.3), -0.5244005127080407, 1e-14));
    CHECK(near(normal_quantile(0.975), 1.9599639845400536, 1e-14));
}
