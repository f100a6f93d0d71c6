// How fast left a ball that flew so far? Without air.
//
//   v     = sqrt( g D^2 / (2 cos^2 a (h + D tan a)) )                 speed from distance, angle known
//   v_min = sqrt( g (sqrt(D^2 + h^2) - h) )                           least speed that reaches D at any angle
//   D     = v cos a / g (v sin a + sqrt(v^2 sin^2 a + 2 g h))         range, as in [PlusMathsShot]
// D is level distance from the point of release (take off the reach past the line), h the height of release
// above the landing place, a the angle above level. Point mass in uniform gravity [Taylor2005, chapter 2],
// closed form.
// Units: m, m/s, rad. Valid: 0.1 to 150 m, h 0 to 10 m, a -30 to 80 degrees with h + D tan a above 0, g 9.76
//   to 9.84.
// Refusals: outside those ranges (out_of_range).
// Method error: with the angle read, +-3 degrees of reading error carried through (proposal of this project,
//   no source); without it v_min, and 2.6 %, what an angle 10 degrees off the best costs at 10 m
//   (recomputed).
// What it cannot tell: drag. With a drag coefficient of 0.5 a 2-kg ball at 12 m/s seems 2.7 % too slow, a
//   1-kg ball 4.8 %, a 4-kg ball 1.8 % (recomputed): the same in every test of one ball, so changes stand,
//   but speeds of two balls by distance are not compared.
// Example: 10 m, released at 1.8 m and 40 degrees: 9.0564 m/s
#pragma once

#include "values/quantity.h"
#include "values/refusal.h"

namespace amentum {

inline constexpr double standard_gravity = 9.80665; // m/s^2, exact [NistSp811, B.8]

struct BallThrow {
    Length distance;
    Length release_height;
};

struct SpeedFromDistance {
    Speed speed;
    double method_error; // m/s
};

Result<SpeedFromDistance> ball_speed_from_distance(const BallThrow& thrown, Angle release_angle,
                                                   double gravity = standard_gravity);
Result<SpeedFromDistance> least_ball_speed_from_distance(const BallThrow& thrown,
                                                         double gravity = standard_gravity);

// Level distance from release to landing.
Result<Length> ball_range(Speed speed, Angle release_angle, Length release_height,
                          double gravity = standard_gravity);

} // namespace amentum
