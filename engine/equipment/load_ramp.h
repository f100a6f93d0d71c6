// The plates of a whole session on one bar: which, and in which order from the inside, so that fewest are
// handled.
//
// The usual habit loads each set with the fewest plates, the heaviest inside, and so takes off in one set what
// the next needs again. Here the stacks of all sets are chosen together (ramp_stacks.h): exact, from the empty
// bar to the empty bar. A session done backwards costs the same.
// Source: own dynamic programme, equal to brute force (tests/laws/load_ramp_test.cpp).
// Units, range and refusals: bar_ramp.h. What it cannot tell: how heavy a handling feels, or who helps; a
// heavy plate outside a light one is as sound on the sleeve as the collar that holds it.
//
// Example: bar 20 kg, pairs 25 and 20; sets 60, 110, 60 kg -> 20; 20, 25; 20: four handled a side, not eight
#pragma once

#include "equipment/bar_ramp.h"

namespace amentum {

Result<LoadRamp> solve_load_ramp(const Kit& kit, const RampWanted& wanted);

} // namespace amentum
