#include "inference/roster_variances.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <functional>
#include <numbers>
#include <numeric>

namespace amentum {
namespace {

constexpr double log_k_sd = 0.5;      // proposal of this project, no source
constexpr double log_q_sd = 1.5;      // proposal of this project, no source
constexpr double errors_a_year = 2.0; // usual drift in a year, in published error SDs; proposal, no source
constexpr double days_in_year = 365.25;
constexpr double tolerance = 1e-6; // in the logarithm of a variance

using Point = std::array<double, 2>;

// Golden section for a maximum on [low, high].
double golden_maximum(const std::function<double(double)>& f, double low, double high) {
    constexpr double ratio = 1 / std::numbers::phi;
    double a = high - ratio * (high - low), b = low + ratio * (high - low);
    double fa = f(a), fb = f(b);
    while (high - low > tolerance) {
        if (fa > fb) {
            high = b, b = a, fb = fa;
            a = high - ratio * (high - low), fa = f(a);
        } else {
            low = a, a = b, fa = fb;
            b = low + ratio * (high - low), fb = f(b);
        }
    }
    return (low + high) / 2;
}

// Coordinate ascent with a shrinking window, then along the last step's direction (the two are correlated).
Point ascend(const std::function<double(Point)>& f, Point at) {
    double window = 3.0;
    for (int round = 0; round < 40; ++round) {
        const Point before = at;
        for (std::size_t i : {0u, 1u}) {
            const auto along = [&](double x) {
                Point p = at;
                p[i] = x;
                return f(p);
            };
            at[i] = golden_maximum(along, at[i] - window, at[i] + window);
        }
        const Point step{at[0] - before[0], at[1] - before[1]};
        const auto along = [&](double s) { return f({at[0] + s * step[0], at[1] + s * step[1]}); };
        const double s = golden_maximum(along, -2, 8);
        at = {at[0] + s * step[0], at[1] + s * step[1]};
        const double moved = std::max(std::abs(at[0] - before[0]), std::abs(at[1] - before[1]));
        if (moved < 10 * tolerance)
            break;
        window = std::clamp(2 * moved, 0.05, 3.0);
    }
    return at;
}

double median_error_variance(std::span<const std::vector<DatedValue>> series) {
    std::vector<double> all;
    for (const auto& one : series)
        for (const auto& value : one)
            all.push_back(value.variance);
    if (all.empty())
        return 1.0;
    std::nth_element(all.begin(), all.begin() + static_cast<std::ptrdiff_t>(all.size() / 2), all.end());
    return all[all.size() / 2];
}

double roster_log_likelihood(std::span<const std::vector<DatedValue>> series, double k, double q) {
    std::vector<double> terms;
    std::vector<DatedValue> scaled;
    for (const auto& one : series) {
        if (one.size() < 2)
            continue;
        scaled.assign(one.begin(), one.end());
        for (auto& value : scaled)
            value.variance *= k;
        terms.push_back(estimate_trajectory(scaled, q).log_likelihood);
    }
    std::sort(terms.begin(), terms.end()); // one sum whatever the order of the athletes
    return std::accumulate(terms.begin(), terms.end(), 0.0);
}

} // namespace

RosterVariances estimate_roster_variances(std::span<const std::vector<DatedValue>> series) {
    const double usual_drift =
        std::log(errors_a_year * errors_a_year * median_error_variance(series) / days_in_year);
    const auto log_posterior = [&](Point p) {
        const double k = p[0] / log_k_sd, q = (p[1] - usual_drift) / log_q_sd;
        return roster_log_likelihood(series, std::exp(p[0]), std::exp(p[1])) - 0.5 * (k * k + q * q);
    };
    const Point best = ascend(log_posterior, {0.0, usual_drift});
    RosterVariances out{std::exp(best[0]), std::exp(best[1]), 0, 0, 0};
    out.log_likelihood = roster_log_likelihood(series, out.error_factor, out.drift);
    for (const auto& one : series)
        if (one.size() >= 2)
            ++out.athletes, out.tests += static_cast<int>(one.size());
    return out;
}

SeriesVariances estimate_series_variances(std::span<const DatedValue> values) {
    std::vector<DatedValue> given(values.begin(), values.end());
    const auto log_likelihood = [&](Point p) {
        for (auto& value : given)
            value.variance = std::exp(p[0]);
        return estimate_trajectory(given, std::exp(p[1])).log_likelihood;
    };
    double mean = 0, square = 0;
    for (const auto& value : values)
        mean += value.value / static_cast<double>(values.size());
    for (const auto& value : values)
        square += (value.value - mean) * (value.value - mean) / static_cast<double>(values.size());
    const Point best = ascend(log_likelihood, {std::log(square / 2), std::log(square / 10)});
    return {std::exp(best[0]), std::exp(best[1]), log_likelihood(best)};
}

} // namespace amentum
