#include "force_traces/measure_trace.h"

#include "force_traces/measure_jump.h"

namespace amentum {

Result<TraceMeasurement> measure_trace(const ForceRecording& recording, const TraceGiven& given) {
    return measure_jump(recording, given);
}

} // namespace amentum
