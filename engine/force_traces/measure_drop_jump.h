// From how high was the drop, how long the contact, how high the rebound?
//
//   contact         from touch-down to take-off, thresholds of jump_events.h [Pmc9750644]
//   height          h = g t^2 / 8 from flight time; take-off speed v = g t / 2
//   touch-down      v_down = v - J / m,  J the impulse of F - W over the contact: one plate is enough [McMahon2021]
//   drop height     v_down^2 / 2g: the true one; a box says what was meant
//   reactive strength, two rivals, both under their names:
//     height over contact (m/s), and flight time over contact time (a plain ratio)
//   lowest point    where the summed speed is 0; braking before, propulsion after; depth below the touch-down
// Body weight: the quietest second after the landing, else body_mass_kg times g.
// Units: SI. Refusals: neither a second of quiet standing after the landing nor a body mass (quiet_too_short or
//   quiet_too_noisy); no flight; no contact of 0.08 to 1 s between an empty plate and the flight, or no drop
//   (not_this_effort); another take-off before rest (second_hop); 605 to 607; moved events out of their order.
// Warned: contact above 0.25 s; a first peak and a dip of more than a tenth after it in the first 60 ms (heels first);
//   a drop height a fifth off the box. The limits are common practice or this project's proposals.
// What it cannot tell: how high the body stood in the air: landing with bent legs lengthens the flight, and with it
//   height, take-off speed and drop height. An error of 10 ms in flight time moves the drop by 0.05 m/s.
// Example: closed form, 75 kg from 0.30 m, contact 0.20 s, 2.4 m/s up -> height 0.2937 m, 1.468 m/s, ratio 2.447
#pragma once

#include "force_traces/trace_measurement.h"
#include "recordings/force_recording.h"
#include "values/refusal.h"

namespace amentum {

Result<TraceMeasurement> measure_drop_jump(const ForceRecording& recording, const TraceGiven& given);

} // namespace amentum
