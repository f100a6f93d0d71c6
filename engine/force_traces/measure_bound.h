// How fast did a side bound leave the plate, upward and sideways?
//
//   upward    v = integral of (F - W) / m from start to take-off, as in measure_jump.h
//   sideways  u = integral of H / m, H the force across the direction faced, less its mean while weighed: a body at rest
//             is pushed to neither side, so that mean is the plate's own zero
//   together  sqrt(v^2 + u^2); the angle above level, atan(v / |u|)
// The landing need not be on a plate. Sideways speed is given without a sign: the bound's direction is the athlete's.
// Errors: trace_errors.h; sideways sqrt((dH T)^2 + sigma_H^2 T d) / m with dH the error of the mean of H, and u dW / W.
// Units: SI, deg. Refusals: as measure_jump.h without those of a dip and of the landing; sideways below 0.3 m/s where
//   the file has a sideways force (not_this_effort).
// Warned: no sideways force in the file (upward only); legs said to be both.
// What it cannot tell: the distance, which depends on the landing; a distance and a speed are never compared.
// Example: closed form, 80 kg, a sideways lobe of 400 N over 0.4 s -> 1.0 m/s sideways
#pragma once

#include "force_traces/trace_measurement.h"
#include "recordings/force_recording.h"
#include "values/refusal.h"

namespace amentum {

Result<TraceMeasurement> measure_bound(const ForceRecording& recording, const TraceGiven& given);

} // namespace amentum
