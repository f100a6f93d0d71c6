#include "inference/calibration.h"

#include "inference/forecast_score.h"
#include "inference/normal_quantile.h"

#include <boost/math/special_functions/gamma.hpp>

#include <algorithm>
#include <cassert>
#include <cmath>

namespace amentum {

Interval chance_interval(int held, int all, double z) {
    assert(all > 0 && held >= 0 && held <= all);
    const double n = all, p = held / n;
    const double middle = p + z * z / (2 * n), half = z * std::sqrt(p * (1 - p) / n + z * z / (4 * n * n));
    const double scale = 1 + z * z / n;
    return {std::max(0.0, (middle - half) / scale), std::min(1.0, (middle + half) / scale)};
}

Coverage count_coverage(std::span<const HeldForecast> forecasts, double stated) {
    assert(!forecasts.empty() && stated > 0 && stated < 1);
    const double z = normal_quantile(0.5 + stated / 2);
    const auto held = std::count_if(forecasts.begin(), forecasts.end(), [&](const auto& each) {
        return std::abs(each.value - each.forecast.mean) <= z * std::sqrt(each.forecast.variance);
    });
    const int all = static_cast<int>(forecasts.size());
    return {stated, static_cast<int>(held), all, chance_interval(static_cast<int>(held), all)};
}

UniformCheck check_uniform(std::span<const double> values, int bins) {
    assert(!values.empty() && bins >= 2);
    UniformCheck check{std::vector<int>(static_cast<std::size_t>(bins), 0), 0};
    for (const double u : values)
        ++check.counts[static_cast<std::size_t>(std::clamp(static_cast<int>(u * bins), 0, bins - 1))];
    const double expected = static_cast<double>(values.size()) / bins;
    double sum = 0;
    for (const int count : check.counts)
        sum += (count - expected) * (count - expected) / expected;
    check.chance = boost::math::gamma_q((bins - 1) / 2.0, sum / 2);
    return check;
}

std::vector<double> integral_transform(std::span<const HeldForecast> forecasts) {
    std::vector<double> values;
    for (const auto& each : forecasts)
        values.push_back(normal_cdf((each.value - each.forecast.mean) / std::sqrt(each.forecast.variance)));
    return values;
}

ScoreComparison compare_scores(std::span<const HeldForecast> forecasts) {
    assert(forecasts.size() >= 2);
    const auto score = [](const StateOnDay& state, double value) {
        return forecast_score({state.mean, std::sqrt(state.variance)}, value);
    };
    const double n = static_cast<double>(forecasts.size());
    ScoreComparison comparison{0, 0, {0, 0}};
    for (const auto& each : forecasts) {
        comparison.ours += score(each.forecast, each.value) / n;
        comparison.rival += score(each.rival, each.value) / n;
    }
    const double ratio = comparison.ours / comparison.rival;
    double squares = 0; // the mean of ours - ratio rival is 0
    for (const auto& each : forecasts)
        squares += std::pow(score(each.forecast, each.value) - ratio * score(each.rival, each.value), 2);
    comparison.share = {1 - ratio, std::sqrt(squares / (n - 1) / n) / comparison.rival};
    return comparison;
}

} // namespace amentum
