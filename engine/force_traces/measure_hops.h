// How long on the ground and how high in the air were the hops of a series, and how even?
//
// Contacts and flights by the thresholds of jump_events.h. A hop is a contact of 0.08 to 0.6 s between two flights and
// the flight after it; the longest unbroken chain counts, so that standing, the first jump and the last landing do not.
//   height h = g t^2 / 8;  reactive strength of each hop: h / contact, and flight / contact; mean and SD over hops
// Body weight: the quietest second before the hops, else after them, else body_mass_kg, else the mean force from the
//   first to the last touch-down of the chain (closed form: the momentum comes back to where it was).
// Units: SI. Refusals: no flight (no_flight); fewer than three hops in a row (too_few_data); 605 to 607; moved events:
//   only those of the weighing can be moved. Warned: contacts above 0.25 s on the mean; heights that fall by a fifth
//   from the first third to the last (tiring, or a change of hopping). The limits are this project's proposals.
// What it cannot tell: bent legs in the air; the error of a mean says how well this series is known, not the athlete.
// Example: contacts of 0.2 s, flights of 0.4895 s -> height 0.2937 m, 1.468 m/s, ratio 2.447
#pragma once

#include "force_traces/trace_measurement.h"
#include "recordings/force_recording.h"
#include "values/refusal.h"

namespace amentum {

Result<TraceMeasurement> measure_hops(const ForceRecording& recording, const TraceGiven& given);

} // namespace amentum
