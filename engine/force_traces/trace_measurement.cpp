#include "force_traces/trace_measurement.h"

namespace amentum {

const TraceMetric* TraceMeasurement::metric(const std::string& key) const {
    for (const auto& each : metrics)
        if (each.key == key)
            return &each;
    return nullptr;
}

} // namespace amentum
