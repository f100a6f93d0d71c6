#include "force_traces/inside/metric_rows.h"

#include <cmath>

namespace amentum::inside {

TraceMetric row(std::string key, std::string name, double value, std::string unit, int decimals,
                std::optional<double> error, std::string note) {
    return {std::move(key), std::move(name), value, std::move(unit), decimals,
            error,          std::nullopt,    "",    std::move(note)};
}

TraceMetric between_days(TraceMetric metric, double fraction, std::string source) {
    metric.day_error = fraction;
    metric.error_source = std::move(source);
    return metric;
}

void add_share(const ForceRecording& recording, const PlateZero& zero, double sample_sd_n,
               const std::string& phase, SampleSpan span, TraceMeasurement& into) {
    const auto share = leg_share(recording, zero, sample_sd_n, span);
    if (!share)
        return;
    into.metrics.push_back(row(
        "left_share_" + phase, "Left minus right over both, " + phase, share->percent, "%", 1, share->error,
        "Positive means more on the left. Look at several trials: a share that changes its "
        "sign between trials is no difference between the legs."));
}

MeanAndSpread mean_and_spread(const std::vector<double>& values) {
    double sum = 0, squares = 0;
    const double n = static_cast<double>(values.size());
    for (const double each : values)
        sum += each;
    for (const double each : values)
        squares += (each - sum / n) * (each - sum / n);
    return {sum / n, values.size() > 1 ? std::sqrt(squares / (n - 1)) : 0};
}

} // namespace amentum::inside
