// On the last two test days of the hall's regular throwers the other side is measured too, so that sides can be compared.
//
// Shoulder and hip rotation by the same rater and tool, grip by the same dynamometer, two readings each. The other shoulder
// turns outward 6.8 degrees less and inward 9.6 degrees more than the throwing one, as in young throwers on average
// [Gouveia2021]; the hips differ by no more than their error; the other hand grips 6 % less (common practice, no source).
// Own random numbers: what was simulated before is untouched.
#pragma once

#include "values/record_set.h"

#include <cstdint>

namespace amentum {

inline constexpr double outward_less_deg = 6.8, inward_more_deg = 9.6; // of the other shoulder [Gouveia2021]
inline constexpr double other_grip = 0.94;

void add_other_side(RecordSet&, const Athlete&, std::uint64_t seed);

} // namespace amentum
