// How much speed does a thrown ball lose on its way? Quadratic drag along a straight path.
//
//   v(x) = v0 exp(-x / L),   t(x) = L / v0 (exp(x / L) - 1),   L = 2 m / (rho C_d A)
// from m dv/dt = -rho C_d A v^2 / 2 (closed form). x may be negative: the speed earlier on the path.
// Balls (mass, girth): baseball 5.125 oz, 9.125 in; softball 12-inch 6.625 oz, 12 in; softball 11-inch
//   6.0 oz, 11 in: middles of the ranges in the rules of play (softball masses from memory).
// Units: kg, m, kg/m^3. C_d 0.3 to 0.4 for a baseball (from memory); ours 0.33, standard deviation 0.03,
//   which is the stated standard error of v(x).
// Valid: |x| <= 120 m, C_d 0.1 to 1, air 0.8 to 1.4 kg/m^3, v above 0 to 60 m/s. Refusals: outside
//   (out_of_range).
// What it cannot tell: lift and spin; a softball's C_d; wind.
// Example: a baseball of 90 mph is at 81.46 mph after 55 ft (C_d 0.33, 1.225 kg/m^3)
#pragma once

#include "values/enum_words.h"
#include "values/interval.h"
#include "values/quantity.h"
#include "values/refusal.h"

namespace amentum {

enum class BallKind { baseball, softball_12, softball_11 };
template <>
inline constexpr std::array<std::pair<BallKind, std::string_view>, 3> words_of<BallKind>{
    {{BallKind::baseball, "baseball"},
     {BallKind::softball_12, "softball_12"},
     {BallKind::softball_11, "softball_11"}}};

struct Ball {
    Mass mass;
    Length girth; // around its middle
};
Ball rule_ball(BallKind kind);

struct Air {
    double drag_coefficient = 0.33;
    double density = 1.225; // kg/m^3, dry air at 15 degrees C at sea level [IsaAtmosphere]
};

Result<Length> ball_decay_length(const Ball& ball, const Air& air);
Result<Estimate> ball_speed_after_distance(const Ball& ball, const Air& air, Speed at_start, Length x); // m/s
Result<Duration> ball_time(const Ball& ball, const Air& air, Speed at_start, Length x);

// Joules, m v^2 / 2: an outcome that throws of different balls can share [Nakata2013].
double kinetic_energy(Mass mass, Speed speed);

} // namespace amentum
