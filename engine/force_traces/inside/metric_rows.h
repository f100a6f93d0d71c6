// Rows of a measurement: a number with its unit, error and note.
#pragma once

#include "force_traces/leg_share.h"
#include "force_traces/trace_measurement.h"

namespace amentum::inside {

TraceMetric row(std::string key, std::string name, double value, std::string unit, int decimals,
                std::optional<double> error, std::string note = "");

// The same with a published error between days, a fraction, and its source.
TraceMetric between_days(TraceMetric metric, double fraction, std::string source);

// Adds left_share_PHASE when both feet have their plate.
void add_share(const ForceRecording& recording, const PlateZero& zero, double sample_sd_n,
               const std::string& phase, SampleSpan span, TraceMeasurement& into);

// Mean and SD of a few values; SD 0 of one value.
struct MeanAndSpread {
    double mean;
    double sd;
};
MeanAndSpread mean_and_spread(const std::vector<double>& values);

} // namespace amentum::inside
