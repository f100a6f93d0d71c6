// What did the body do on the plate, with what error?
//
// One entry for all trace tests; each test's method, formulas and sources stand in its own header.
// Refusals (6xx of values/refusal.h): quiet standing too short or too noisy, no flight, a second hop before the
//   landing, an offset too large to correct, a saturated plate, a rate too low, a pull whose peak is at its end;
//   a moved event out of its order or outside the trace (out_of_range, field moved_events.KEY).
// Pure: the same samples and the same words give the same numbers, bit for bit.
#pragma once

#include "force_traces/trace_measurement.h"
#include "recordings/force_recording.h"
#include "values/refusal.h"

namespace amentum {

Result<TraceMeasurement> measure_trace(const ForceRecording& recording, const TraceGiven& given);

} // namespace amentum
