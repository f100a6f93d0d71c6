// How much faster was a heavy ball thrown for distance than its distance alone says, because air slows it?
//
//   dv/dt = -g - v |v| / L,  L = 2 m / (rho C_d A),  A = pi d^2 / 4     (quadratic drag, in the plane of the throw)
// integrated by the classical fourth-order Runge-Kutta method; the release speed that lands at D is found by bisection.
//   correction = ln(speed with drag / speed without), to be added to the ln of what ball_flight.h says
// The ball's diameter is the usual one of a ball of its mass, d = 0.175 m + 0.014 m for each kg (19 cm at 1 kg, 23 cm at
//   4 kg: common practice, no source), C_d = 0.5 (a sphere below its crisis, from memory), rho = 1.20 kg/m^3.
// Standard error: 28 % of the correction, from 20 % in C_d and 10 % in d (proposal of this project, no source). It is the
//   same error for all balls of one day.
// Units: m, kg. Valid: ball 0.5 to 6 kg, the throw's ranges as in ball_flight.h, a distance the ball can reach with
//   60 m/s. Refusals: outside (out_of_range).
// What it cannot tell: the true size and surface of the ball; wind; spin.
// Example: a 1 kg ball of 19 cm released at 40 degrees and 1.8 m that lands at 14.98 m left with 12.0 m/s, not 11.43
#pragma once

#include "measurement/ball_flight.h"
#include "values/interval.h"

namespace amentum {

Length usual_diameter(Mass ball);

// The angle at which the least speed reaches the distance: for throws whose angle was not read.
Angle best_release_angle(const BallThrow& thrown);

Result<Estimate> estimate_drag_correction(const BallThrow& thrown, Angle release_angle, Mass ball,
                                          Length diameter);

} // namespace amentum
