// The dynamic programme of ramp_stacks.h, for given choices of each set.
//
// A state is a run of sets and the plates that are on during all of it. Given up is what cannot be better: a state
// whose sets, in any order on the sleeve (ramp_bound.h), need more intervals than the limit leaves. A plate that every
// choice of every set of a state has is put on at once: left for later it would be put on at least once as well.
// Range: at most 400,000 states; beyond, no answer.
// What it cannot tell: whether a choice that was not given would do better.
//
// Example: choices {20} | {20, 5} | {20} -> 20; 20, 5; 20 with two intervals.
#pragma once

#include "equipment/ramp_stacks.h"

#include <limits>
#include <optional>
#include <vector>

namespace amentum {

struct RampChoice {
    PlateCounts plates;
    ExactMass mass;    // of them
    ExactMass lacking; // below what was wanted
    int count;         // of plates
};
using ChoicesOfSets = std::vector<std::vector<RampChoice>>; // of each set at least one

inline constexpr int no_limit = std::numeric_limits<int>::max() / 2;

struct ProgrammeAnswer {
    std::optional<RampStacks> stacks; // none: every ramp needs more intervals than the limit, or not complete
    bool complete;                    // false: too many states
};
ProgrammeAnswer solve_ramp_programme(const ChoicesOfSets& choices, const std::vector<ExactMass>& each,
                                     int most_intervals = no_limit);

} // namespace amentum
