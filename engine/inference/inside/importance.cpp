#include "inference/inside/importance.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <limits>
#include <numeric>
#include <vector>

namespace amentum {
namespace {

using Eigen::Index;
using Eigen::VectorXd;

constexpr double alike = 1e-9; // logarithms of ratios: what is left is rounding
constexpr double infinity = std::numeric_limits<double>::infinity();

std::vector<Index> rising_order(const VectorXd& x) {
    std::vector<Index> order(static_cast<std::size_t>(x.size()));
    std::iota(order.begin(), order.end(), Index{0});
    std::stable_sort(order.begin(), order.end(), [&](Index a, Index b) { return x[a] < x[b]; });
    return order;
}

double towards_half(double shape, Index n) {
    return (shape * static_cast<double>(n) + 0.5 * 10) / (static_cast<double>(n) + 10);
}

double pareto_quantile(const ParetoTail& tail, double p) {
    const double e = -std::log1p(-p); // of a unit exponential
    return tail.scale * (std::abs(tail.shape) < 1e-12 ? e : std::expm1(tail.shape * e) / tail.shape);
}

// Replaces the tail's ratios, the largest of which is 1; answers k-hat.
double smooth_tail(VectorXd& ratios, const std::vector<Index>& order, Index tail) {
    const auto at = [&](Index rank) -> double& { return ratios[order[static_cast<std::size_t>(rank)]]; };
    const Index S = ratios.size(), first = S - tail;
    const double cutoff = at(first - 1);
    VectorXd above(tail);
    for (Index i = 0; i < tail; ++i)
        above[i] = at(first + i) - cutoff;
    if (!(at(first) < at(S - 1)) || !(above[0] >= 0))
        return infinity;
    ParetoTail fitted = fit_pareto_tail(above);
    fitted.shape = towards_half(fitted.shape, tail);
    if (!std::isfinite(fitted.shape) || !std::isfinite(fitted.scale))
        return infinity;
    for (Index i = 0; i < tail; ++i) {
        const double p = (static_cast<double>(i) + 0.5) / static_cast<double>(tail);
        at(first + i) = std::min(1.0, cutoff + pareto_quantile(fitted, p));
    }
    return fitted.shape;
}

} // namespace

// The grid of theta = -shape / scale, its profile likelihood and the mean over both: section 4 of the paper.
ParetoTail fit_pareto_tail(const VectorXd& x) {
    const Index n = x.size();
    const auto quartile = static_cast<Index>(static_cast<double>(n) / 4 + 0.5);
    assert(quartile >= 1);
    const int grid = 30 + static_cast<int>(std::sqrt(static_cast<double>(n)));
    VectorXd theta(grid), log_likelihood(grid);
    const auto shape_at = [&](double t) { return (-t * x.array()).log1p().mean(); };
    for (int j = 0; j < grid; ++j) {
        theta[j] = 1 / x[n - 1] + (1 - std::sqrt(grid / (j + 0.5))) / (3 * x[quartile - 1]);
        const double k = shape_at(theta[j]);
        log_likelihood[j] = static_cast<double>(n) * (std::log(-theta[j] / k) - k - 1);
    }
    const VectorXd weight = (log_likelihood.array() - log_likelihood.maxCoeff()).exp();
    const double mean = theta.dot(weight) / weight.sum();
    const double shape = shape_at(mean);
    return {shape, -shape / mean};
}

ImportanceWeights smooth_importance(const VectorXd& log_ratios) {
    assert(log_ratios.size() >= 25 && !log_ratios.hasNaN());
    const Index S = log_ratios.size();
    const double s = static_cast<double>(S);
    const double most = log_ratios.maxCoeff();
    assert(std::isfinite(most));
    if (most - log_ratios.minCoeff() < alike)
        return {VectorXd::Constant(S, 1 / s), 0, s};
    // Not Eigen's exponential: it never comes to 0.
    VectorXd ratios = log_ratios.unaryExpr([most](double r) { return std::exp(r - most); });
    const auto tail = static_cast<Index>(std::ceil(std::min(0.2 * s, 3 * std::sqrt(s))));
    const double shape = smooth_tail(ratios, rising_order(log_ratios), tail);
    ratios /= ratios.sum();
    return {ratios, shape, 1 / ratios.squaredNorm()};
}

double tail_shape_limit(Index draws) {
    return std::min(1 - 1 / std::log10(static_cast<double>(draws)), 0.7);
}

double weighted_mean(const VectorXd& values, const VectorXd& weights) {
    return weights.dot(values) / weights.sum();
}

double weighted_variance(const VectorXd& values, const VectorXd& weights) {
    const double mean = weighted_mean(values, weights);
    return weights.dot((values.array() - mean).square().matrix()) / weights.sum();
}

double weighted_share_below(const VectorXd& values, const VectorXd& weights, double limit) {
    return weights.dot((values.array() < limit).cast<double>().matrix()) / weights.sum();
}

double weighted_quantile(const VectorXd& values, const VectorXd& weights, double p) {
    assert(p > 0 && p < 1);
    const double wanted = p * weights.sum();
    double seen = 0;
    const auto order = rising_order(values);
    for (const Index i : order) {
        seen += weights[i];
        if (seen >= wanted)
            return values[i];
    }
    return values[order.back()];
}

double weighted_mean_error(const VectorXd& values, const VectorXd& weights) {
    const double mean = weighted_mean(values, weights);
    return weights.cwiseProduct((values.array() - mean).matrix()).norm() / weights.sum();
}

} // namespace amentum
