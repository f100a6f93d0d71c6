// The fit of a generalised Pareto distribution, against that distribution's own quantiles in closed form.
#include "inference/inside/importance.h"

#include <doctest/doctest.h>

#include <cmath>

using namespace amentum;
using Eigen::Index;
using Eigen::VectorXd;

namespace {

// x(p) = scale ((1 - p)^-k - 1) / k; k 0: -scale log(1 - p). At p = (i - 1/2) / n: as a sample without luck.
VectorXd exact_quantiles(double shape, double scale, Index n) {
    VectorXd x(n);
    for (Index i = 0; i < n; ++i) {
        const double left = 1 - (static_cast<double>(i) + 0.5) / static_cast<double>(n);
        x[i] = scale * (shape == 0 ? -std::log(left) : (std::pow(left, -shape) - 1) / shape);
    }
    return x;
}

} // namespace

TEST_CASE("shape and scale are found from exact quantiles") {
    // A sample's own SD of the shape, by highest likelihood: (1 + k) / sqrt(n); of log scale sqrt(2 (1 + k) / n)
    // [ZhangStephens2009, from memory]. Without luck: within half of it.
    for (const double shape : {-0.3, 0.0, 0.2, 0.5, 0.7, 1.0})
        for (const double scale : {0.01, 2.0})
            for (const Index n : {200, 1000}) {
                const ParetoTail tail = fit_pareto_tail(exact_quantiles(shape, scale, n));
                CAPTURE(shape);
                CAPTURE(scale);
                CAPTURE(n);
                CAPTURE(tail.shape);
                CAPTURE(tail.scale);
                CHECK(std::abs(tail.shape - shape) < 0.5 * (1 + shape) / std::sqrt(n));
                CHECK(std::abs(std::log(tail.scale / scale)) <
                      0.5 * std::sqrt(2 * (1 + shape) / static_cast<double>(n)));
            }
}

TEST_CASE("a change of unit changes the scale and not the shape") {
    const VectorXd x = exact_quantiles(0.4, 1, 100);
    const ParetoTail one = fit_pareto_tail(x), thousand = fit_pareto_tail(1000 * x);
    CHECK(thousand.shape == doctest::Approx(one.shape).epsilon(1e-10));
    CHECK(thousand.scale == doctest::Approx(1000 * one.scale).epsilon(1e-10));
}
