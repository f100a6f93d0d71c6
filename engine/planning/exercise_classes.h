// Which exercises do the rules of a block speak about?
//
// The words "heavy for the legs", "overhead" and "linear throw" have no standard; these are ours, read off an exercise's
// part, region, pattern and means:
//   heavy for the legs  a main lift or assistance of the legs or the whole body, loaded by anything but band or body
//   overhead            a pattern named "overhead..." or "vertical_push" that is thrown, lifted or pushed, not stretched
//   linear throw        a ball throw whose pattern is not named "rotational..." or "scoop..."
// What it cannot tell: how heavy the athlete finds it.
//
// Example: a hex-bar deadlift is heavy for the legs; a band walk is not.
#pragma once

#include "values/exercise.h"

namespace amentum {

bool heavy_for_legs(const Exercise& exercise);
bool loads_arm_overhead(const Exercise& exercise);
bool linear_throw(const Exercise& exercise);
bool kneeling_overhead_throw(const Exercise& exercise);

// Above this ball mass a straight-line throw is no longer fast [common practice, no source].
inline constexpr Mass linear_throw_most = Mass::pounds(8);

}  // namespace amentum
