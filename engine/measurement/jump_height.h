// How high was the jump?
//
//   flight_time        h = g t^2 / 8          take-off and landing in one posture (closed form)
//   take_off_velocity  h = v^2 / (2 g)        from a force plate's impulse (closed form)
// g = 9.80665 m/s^2. Units: s, m/s, m. Valid: t 0.1 to 1.2 s, v 0.4 to 6 m/s. Refusals: outside
//   (out_of_range).
// The two are never mixed in one result or one series: flight time read 1.7 cm more than impulse in the same
// jumps [Baumgart2017], because the legs land more bent than they left.
// What it cannot tell: bent legs at landing, which lengthen the flight.
// Example: 0.550 s -> 0.37081 m; 2.70 m/s -> 0.37169 m
#pragma once

#include "values/quantity.h"
#include "values/refusal.h"

namespace amentum {

Result<Length> jump_height_from_flight_time(Duration flight_time);
Result<Length> jump_height_from_take_off_velocity(Speed take_off);

} // namespace amentum
