// How high, how fast and how was a jump from standing, with a dip or from a held squat?
//
//   height from take-off speed  h = v^2 / 2 g       impulse and momentum [Linthorne2001; Moir2008]
//   height from flight time     h = g t^2 / 8       lands lower than it left: reads more, 1.7 cm in one study [Baumgart2017]
//     Both are given, each under its name; they are never mixed in one series.
//   rise at take-off            s(take-off), from where the movement began (standing, or the squat)
//   dip                         -s at the lowest point
//   phases                      weighing; unweighting to the fastest downward; braking to the lowest point; propulsion
//                               to take-off; flight; landing to rest [McMahon2018]
//   power                       P = F v: the highest before take-off; the mean over propulsion
//   impulses                    of F - W over a phase; of the whole jump m v
//   reactive strength, modified height from take-off speed over the time from start to take-off
//   share of the legs           leg_share.h
// Events, thresholds: jump_events.h; weighing: quiet_standing.h; errors: trace_errors.h.
// Units: SI. Refusals: 601 to 607; a dip under 3 cm where a dip is meant, or over 5 cm where none is meant, or a
//   take-off below 0.4 m/s (not_this_effort); a moved event out of its order (out_of_range). A dip of 1 to 5 cm in a
//   squat jump is warned about. These limits are this project's proposals.
// Warned: flight height more than 5 cm above the other (bent legs at landing); more than 0.1 m/s left at the end of
//   the landing; standing after it 2 % lighter or heavier; landing not in the trace; fewer than 500 samples a second.
// What it cannot tell: what any joint or muscle did; whether the arms helped; why one jump differs from the next.
//   Heights and power come from the same integral, so that they go together says nothing [Linthorne2021].
// Example: closed-form jump of 80 kg, v 2.853 m/s -> 0.415 m; 4501 W; 2.33 s less its start
#pragma once

#include "force_traces/trace_measurement.h"
#include "recordings/force_recording.h"
#include "values/refusal.h"

namespace amentum {

Result<TraceMeasurement> measure_jump(const ForceRecording& recording, const TraceGiven& given);

} // namespace amentum
