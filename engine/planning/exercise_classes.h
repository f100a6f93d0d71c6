// Which exercises do the rules of a block speak about?
//
// The words "heavy for the legs", "overhead" and "linear throw" have no standard; these are ours, read off an
// exercise's part, region, pattern and means:
//   heavy for the legs  a main lift or assistance of the legs or the whole body, unless band or body loads it
//   hard on a tired arm a pattern named "overhead..." or "vertical_press", thrown or pressed, not stretched;
//                       and whatever the catalogue's caution "day_after_pitching" speaks against
//   linear throw        a ball throw that is speed work and whose pattern is not named "rotational..."
// What it cannot tell: how heavy the athlete finds it.
//
// Example: a hex-bar deadlift is heavy for the legs; a band walk is not.
#pragma once

#include "values/exercise.h"

namespace amentum {

bool heavy_for_legs(const Exercise& exercise);
bool hard_on_tired_arm(const Exercise& exercise);
// Column and band pulls go from high to low for throwers, from low to high for hitters (common practice, no source).
bool hitters_pull(const Exercise& exercise);
bool linear_throw(const Exercise& exercise);
bool kneeling_overhead_throw(const Exercise& exercise);

// Above this ball mass a straight-line throw is no longer fast [common practice, no source].
inline constexpr Mass linear_throw_most = Mass::pounds(8);

} // namespace amentum
