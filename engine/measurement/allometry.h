// How strong for the body's size, and how does ball speed fall with ball mass?
//
//   scaled strength  L / M^b;  b = 0.67 geometric similarity [Jaric2002]; squat 0.496, bench 0.559 [Oba2014,
//                    American football]; b = 1 the plain ratio. No b is right everywhere: the choice is the
//                    caller's.
//   mass exponent    slope of ln v on ln m over two or more balls, least squares; -0.21 over balls of
//                    60-fold mass [Cross2004], toward -0.5 for heavy implements
// Units: kg, so scaled strength is kg^(1-b). Valid: L above 0, M 15 to 250 kg, b 0 to 1. Refusals: outside;
//   one ball.
// What it cannot tell: whether relative strength goes with velocity; with mass in the model, no study shows
//   it.
// Example: 150 kg at 80 kg, b 0.67: 7.9620
#pragma once

#include "values/quantity.h"
#include "values/refusal.h"

#include <vector>

namespace amentum {

Result<double> allometric_strength(Mass lifted, Mass body_mass, double exponent);
Result<double> ball_mass_exponent(const std::vector<Mass>& masses, const std::vector<Speed>& speeds);

} // namespace amentum
