#include "force_traces/compare_trials.h"

#include "values/shortest_decimal.h"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace amentum {
namespace {

constexpr double pull_limit_n = 250;
constexpr double trial_error_of_jumps = 0.04;

// The limit of the range, for the number the effort is about.
std::optional<double> range_limit(TraceTest test, const std::string& key, double mean) {
    if (test == TraceTest::isometric_pull)
        return key == "gross_peak_force" ? std::optional(pull_limit_n) : std::nullopt;
    const bool main = key == "jump_height_impulse" || key == "take_off_speed_sideways";
    return main ? std::optional(3 * std::sqrt(2.0) * trial_error_of_jumps * mean) : std::nullopt;
}

std::string with_unit(double x, const TraceMetric& metric) {
    return format_fixed(x, metric.decimals) + (metric.unit == "1" ? "" : " " + metric.unit);
}

std::optional<ComparedMetric> compared(const std::vector<TraceMeasurement>& trials,
                                       const TraceMetric& metric) {
    std::vector<double> values;
    for (const auto& trial : trials) {
        const TraceMetric* same = trial.metric(metric.key);
        if (!same)
            return std::nullopt;
        values.push_back(same->value);
    }
    const double n = static_cast<double>(values.size());
    double mean = 0, squares = 0;
    for (const double value : values)
        mean += value / n;
    for (const double value : values)
        squares += (value - mean) * (value - mean);
    const auto [low, high] = std::minmax_element(values.begin(), values.end());
    ComparedMetric all{
        metric.key,   metric.name, metric.unit, metric.decimals,     mean, std::sqrt(squares / (n - 1)),
        *high - *low, false,       false,       "no published limit"};
    if (const auto limit = range_limit(trials.front().given.test, metric.key, mean)) {
        all.judged = true;
        all.disagree = all.range > *limit;
        all.words = "the trials differ by " + with_unit(all.range, metric) + "; up to " +
                    with_unit(*limit, metric) + " is usual";
    }
    return all;
}

} // namespace

Result<TrialComparison> compare_trials(const std::vector<TraceMeasurement>& trials) {
    assert(!trials.empty());
    if (trials.size() < 2)
        return Refusal{RefusalCode::too_few_data, "One trial cannot be compared with itself.", "trials", "1",
                       "2 or more"};
    TrialComparison comparison;
    for (const auto& metric : trials.front().metrics) {
        const auto each = compared(trials, metric);
        if (!each)
            continue;
        if (each->disagree && !comparison.disagreement)
            comparison.disagreement =
                Refusal{RefusalCode::trials_disagree,
                        each->name + ": " + each->words + ". Repeat the trial rather than average.",
                        metric.key, with_unit(each->range, metric), "trials nearer to each other"};
        comparison.metrics.push_back(*each);
    }
    return comparison;
}

} // namespace amentum
