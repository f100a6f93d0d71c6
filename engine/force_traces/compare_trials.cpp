#include "force_traces/compare_trials.h"

#include "force_traces/inside/metric_rows.h"
#include "values/shortest_decimal.h"

#include <algorithm>

namespace amentum {
namespace {

constexpr double pull_range_n = 250;
constexpr double day_errors_allowed = 3;

std::optional<double> allowed_range(const TraceMetric& metric, double mean) {
    if (metric.key == "gross_peak_force" || metric.key == "net_peak_force")
        return pull_range_n;
    if (metric.day_error)
        return day_errors_allowed * *metric.day_error * mean;
    return std::nullopt;
}

// The metric's values over all trials, or nothing when a trial lacks it.
std::vector<double> values_of(const std::string& key, const std::vector<TraceMeasurement>& trials) {
    std::vector<double> values;
    for (const auto& trial : trials) {
        const auto* metric = trial.metric(key);
        if (!metric)
            return {};
        values.push_back(metric->value);
    }
    return values;
}

ComparedMetric compared(const TraceMetric& metric, const std::vector<double>& values) {
    const auto together = inside::mean_and_spread(values);
    const auto [least, most] = std::minmax_element(values.begin(), values.end());
    const auto allowed = allowed_range(metric, together.mean);
    return {metric.key,      metric.name,   metric.unit,
            metric.decimals, together.mean, together.sd,
            *most - *least,  allowed,       !allowed || *most - *least <= *allowed};
}

Refusal disagreement(const ComparedMetric& metric, std::size_t trials) {
    const std::string range = format_fixed(metric.range, metric.decimals) + " " + metric.unit;
    const std::string allowed = format_fixed(*metric.allowed_range, metric.decimals) + " " + metric.unit;
    return {RefusalCode::trials_disagree,
            "\"" + metric.name + "\" differs by " + range + " between the " + std::to_string(trials) +
                " trials, more than the " + allowed +
                " allowed: repeat the test, or leave out the trial that failed.",
            metric.key, range, "up to " + allowed};
}

} // namespace

Result<TrialComparison> compare_trials(const std::vector<TraceMeasurement>& trials) {
    if (trials.size() < 2)
        return Refusal{RefusalCode::too_few_data, "Trials are compared from two on.", "trials",
                       std::to_string(trials.size()), "at least 2"};
    for (const auto& trial : trials)
        if (trial.given.test != trials.front().given.test || trial.given.legs != trials.front().given.legs)
            return Refusal{RefusalCode::method_does_not_apply,
                           "Only trials of one test with the same legs are compared.", "trials",
                           word(trial.given.test) + ", " + word(trial.given.legs),
                           word(trials.front().given.test) + ", " + word(trials.front().given.legs)};
    TrialComparison comparison{trials.size(), {}, {}};
    for (const auto& metric : trials.front().metrics) {
        const auto values = values_of(metric.key, trials);
        if (values.empty())
            continue;
        comparison.metrics.push_back(compared(metric, values));
        if (!comparison.metrics.back().agrees)
            comparison.disagreements.push_back(disagreement(comparison.metrics.back(), trials.size()));
    }
    return comparison;
}

} // namespace amentum
