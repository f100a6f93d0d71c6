// Smoothed weights against proposals and targets whose ratios have a known tail, and helpers against numbers by hand.
#include "inference/inside/importance.h"
#include "inference/inside/laplace_draws.h"
#include "inference/random_stream.h"

#include <doctest/doctest.h>

#include <cmath>
#include <limits>
#include <numbers>

using namespace amentum;
using Eigen::Index;
using Eigen::MatrixXd;
using Eigen::VectorXd;

namespace {

VectorXd exponentials(Index n, std::uint64_t seed) {
    RandomStream random(seed);
    VectorXd x(n);
    for (double& each : x)
        each = -std::log(random.next_uniform());
    return x;
}

// Proposal Exp(1), target Exp(rate): ratio rate e^((1 - rate) x), so P(ratio > t) ~ t^(-1 / (1 - rate)): k = 1 - rate exactly.
ImportanceWeights exponential_pair(double rate, const VectorXd& x) {
    return smooth_importance((1 - rate) * x);
}

double mean_shape(double rate, int times) {
    double sum = 0;
    for (int i = 0; i < times; ++i)
        sum += exponential_pair(rate, exponentials(4000, 100 + static_cast<std::uint64_t>(i))).tail_shape;
    return sum / times;
}

} // namespace

TEST_CASE("the tail's shape is found: exponential proposal and target") {
    // The tail is M = 3 sqrt(4000) = 190 ratios. An estimate of k has an SD of about (1 + k) / sqrt(M); ten observations'
    // worth of 1/2 are mixed in. Mean of 60; four of its standard errors.
    for (const double k : {0.2, 0.5, 0.8}) {
        const double expected = (190 * k + 5) / 200;
        CAPTURE(k);
        CHECK(std::abs(mean_shape(1 - k, 60) - expected) < 4 * (1 + k) / std::sqrt(190.0 * 60));
    }
}

TEST_CASE("below the limit weighted means are right, above it the alarm is raised") {
    const VectorXd x = exponentials(4000, 7);
    const ImportanceWeights good = exponential_pair(0.7, x);
    CHECK(good.tail_shape < tail_shape_limit(4000));
    CHECK(std::abs(good.weights.sum() - 1) < 1e-12);
    CHECK(std::abs(weighted_mean(x, good.weights) - 1 / 0.7) < 4 * weighted_mean_error(x, good.weights));
    // The median of Exp(0.7) is ln 2 / 0.7; the share below it is a half.
    const double median = std::numbers::ln2 / 0.7;
    const VectorXd below = (x.array() < median).cast<double>();
    CHECK(std::abs(weighted_share_below(x, good.weights, median) - 0.5) <
          4 * weighted_mean_error(below, good.weights));
    CHECK(std::abs(weighted_quantile(x, good.weights, 0.5) - median) < 0.1);
    const ImportanceWeights bad = exponential_pair(0.05, x);
    CHECK(bad.tail_shape > tail_shape_limit(4000));
    CHECK(bad.size < good.size / 4);
}

TEST_CASE("a banana around whose mode normal draws were made raises the alarm") {
    // y | x ~ N(2 x^2, 1), x ~ N(0, 1). Curvature at the mode: the identity. log ratio = 2 y x^2 - 2 x^4, so
    // E ratio^p is finite for no p above 1: k = 1.
    const LaplaceDraws drawn = draw_around(VectorXd::Zero(2), MatrixXd::Identity(2, 2), 0, 4000, 5);
    VectorXd log_ratios(4000);
    for (Index i = 0; i < 4000; ++i) {
        const double x = drawn.values(0, i), y = drawn.values(1, i), off = y - 2 * x * x;
        log_ratios[i] = -0.5 * (x * x + off * off) - drawn.log_density[i];
    }
    CHECK(smooth_importance(log_ratios).tail_shape > tail_shape_limit(4000));
}

TEST_CASE("normal target, draws of a t with 7 degrees of freedom: ratios are bounded, nothing to fear") {
    const LaplaceDraws drawn =
        draw_around(VectorXd::Constant(5, 2), 3 * MatrixXd::Identity(5, 5), 7, 4000, 5);
    VectorXd log_ratios(4000);
    for (Index i = 0; i < 4000; ++i) {
        const double square = (drawn.values.col(i).array() - 2).square().sum() / 9;
        // The constant included, the mean ratio is 1: sum of log SDs 5 log 3.
        log_ratios[i] =
            -square / 2 - 2.5 * std::log(2 * std::numbers::pi) - 5 * std::log(3.0) - drawn.log_density[i];
    }
    const VectorXd ratios = log_ratios.array().exp();
    const double sd = std::sqrt((ratios.array() - ratios.mean()).square().mean());
    CHECK(std::abs(ratios.mean() - 1) < 4 * sd / std::sqrt(4000.0));
    const ImportanceWeights weighed = smooth_importance(log_ratios);
    CHECK(weighed.tail_shape < 0.5);
    const VectorXd x = drawn.values.row(0);
    CHECK(std::abs(weighted_mean(x, weighed.weights) - 2) < 4 * weighted_mean_error(x, weighed.weights));
    const VectorXd squares = (x.array() - 2).square();
    CHECK(std::abs(weighted_variance(x, weighed.weights) - 9) <
          4 * weighted_mean_error(squares, weighed.weights));
}

TEST_CASE("draws around a mode: the t's spread and the normal's density by the formula") {
    // Var of t7: 7 / 5 of its scale. SE of a variance estimate from n draws, kurtosis 3 + 6 / (7 - 4) = 5: sqrt(4 / n).
    MatrixXd factor(2, 2);
    factor << 2, 0, 1, 0.5;
    const LaplaceDraws heavy = draw_around(VectorXd::Zero(2), factor, 7, 20000, 9);
    CHECK(std::abs(heavy.values.row(0).squaredNorm() / 20000 / (4 * 1.4) - 1) < 4 * std::sqrt(4 / 20000.0));
    CHECK(std::abs(heavy.values.row(1).squaredNorm() / 20000 / (1.25 * 1.4) - 1) <
          4 * std::sqrt(4 / 20000.0));
    const LaplaceDraws light = draw_around(VectorXd::Zero(2), factor, 0, 10, 9);
    const double a = light.values(0, 3) / 2, b = (light.values(1, 3) - a) / 0.5;
    // |factor| = 1
    CHECK(std::abs(light.log_density[3] + std::log(2 * std::numbers::pi) + 0.5 * (a * a + b * b)) < 1e-12);
}

TEST_CASE("equal ratios: equal weights; ratios of nothing: no weight") {
    const ImportanceWeights equal = smooth_importance(VectorXd::Constant(100, -3));
    CHECK((equal.weights.array() - 0.01).abs().maxCoeff() < 1e-15);
    CHECK(equal.size == doctest::Approx(100));
    CHECK(equal.tail_shape < tail_shape_limit(100)); // no alarm
    VectorXd some = exponentials(100, 1);
    some[17] = -std::numeric_limits<double>::infinity();
    const ImportanceWeights weighed = smooth_importance(some);
    CHECK(weighed.weights[17] == 0);
    CHECK(weighed.weights.allFinite());
}

TEST_CASE("draws of the target itself: equal weights and no alarm, whatever the rounding") {
    // Both densities of N(m, F F'), one by draw_around, one by the covariance's inverse.
    MatrixXd factor(2, 2);
    factor << 2, 0, 1, 0.5;
    // F F' = (4 2, 2 1.25), of determinant 1.
    const LaplaceDraws drawn = draw_around(VectorXd::Constant(2, 30), factor, 0, 1000, 4);
    VectorXd log_ratios(1000);
    for (Index i = 0; i < 1000; ++i) {
        const double x = drawn.values(0, i) - 30, y = drawn.values(1, i) - 30;
        log_ratios[i] = -0.5 * (1.25 * x * x - 4 * x * y + 4 * y * y) - drawn.log_density[i];
    }
    CHECK(log_ratios.maxCoeff() > log_ratios.minCoeff());
    const ImportanceWeights weighed = smooth_importance(log_ratios);
    CHECK((weighed.weights.array() - 0.001).abs().maxCoeff() < 1e-9);
    CHECK(weighed.tail_shape < tail_shape_limit(1000));
    CHECK(weighed.size == doctest::Approx(1000));
}

TEST_CASE("weighted helpers by hand") {
    const VectorXd x = (VectorXd(3) << 3, 1, 2).finished(), w = (VectorXd(3) << 0.5, 0.2, 0.3).finished();
    CHECK(weighted_mean(x, w) == doctest::Approx(2.3));
    CHECK(weighted_variance(x, w) == doctest::Approx(0.61)); // 0.5 0.49 + 0.2 1.69 + 0.3 0.09
    CHECK(weighted_share_below(x, w, 3) == doctest::Approx(0.5));
    CHECK(weighted_quantile(x, w, 0.1) == 1);
    CHECK(weighted_quantile(x, w, 0.4) == 2);
    CHECK(weighted_quantile(x, w, 0.6) == 3);
    // sqrt(0.25 0.49 + 0.04 1.69 + 0.09 0.09)
    CHECK(weighted_mean_error(x, w) == doctest::Approx(0.44519658579103));
    CHECK(tail_shape_limit(100) == doctest::Approx(0.5)); // 1 - 1/2
    CHECK(tail_shape_limit(10000) == doctest::Approx(0.7));
}
