// Every multiset of plates with exactly this mass, fewest plates first.
//
// Depth-first over the kinds, heaviest first; a branch ends where the plates still allowed cannot reach the
// rest of the mass. Of equally many plates the one with more of the heavy comes first.
// Source: own enumeration, checked against brute force (tests/laws/load_ramp_test.cpp).
// Range: `steps` bounds the work; whoever needs all of them asks `complete`.
// What it cannot tell: in which order the plates stand (ramp_stacks.h).
//
// Example: 40 kg from 20, 20, 15, 10, 10, 5 kg -> {20, 20}, {20, 15, 5}, {20, 10, 10}, {15, 10, 10, 5}
#pragma once

#include "equipment/exact_mass.h"
#include "equipment/plate_counts.h"

#include <vector>

namespace amentum {

struct StackChoices {
    std::vector<PlateCounts> all;
    bool complete = true; // false: the steps ran out, and some may be missing
};

// `each`: mass of each kind, heaviest first. `most`: how many of each kind may be used.
StackChoices stack_choices(ExactMass mass, const std::vector<ExactMass>& each, const PlateCounts& most,
                           int most_plates, int steps = 200'000);

} // namespace amentum
