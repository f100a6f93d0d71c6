// In which order do the plates stand on one sleeve, set after set, so that fewest are handled?
//
// A sleeve gives its plates back in the reverse of the order they went on. So each plate is on it during an
// interval of sets, and two intervals are apart or one holds the other (a laminar family); any such family can
// be stacked. Handlings of one side, from the empty sleeve to the empty sleeve, are 2 x the number of
// intervals.
//   g(i, j, P)  fewest intervals besides P for sets i..j, the plates P being on during all of them:
//   g(i, i, P) = min over choices M of set i that hold P:  |M| - |P|
//   g(i, j, P) = min( g(i, m, P) + g(m+1, j, P) over m;  1 + g(i, j, P + p) over plates p that some choice of
//                     every set i..j can hold with P )
// Source: own dynamic programme, equal to brute force over all ordered stacks (tests/laws/load_ramp_test.cpp).
// First the twelve multisets with fewest plates of each set are tried; of equally many handlings, those of the
// fewest kilograms. Then every multiset that could do with fewer handlings yet is tried: `proven` says that all
// were, so that no stacking needs fewer. A set that may be lighter than wanted is as near as can be first, and
// nothing is proven then.
// Units: ExactMass of one side. Equal sets in a row cost nothing. Range: at most 24 sets.
// What it cannot tell: how long a handling takes, or whether the sleeve is long enough.
//
// Example: sides of 20, 25, 20 kg with plates 20, 15, 10, 5 -> {20}, {20, 5}, {20}: two intervals, four
// handlings.
#pragma once

#include "equipment/exact_mass.h"
#include "equipment/plate_counts.h"

#include <optional>
#include <vector>

namespace amentum {

struct SideWanted {
    ExactMass mass;                         // of the plates on one side
    std::vector<ExactMass> or_lighter = {}; // other masses that would do, each lighter
};

struct RampCost {
    ExactMass lacking = 0; // wanted - made, over all sets
    int intervals = 0;     // plates put on, one side
    ExactMass moved = 0;   // their mass
    friend auto operator<=>(const RampCost&, const RampCost&) = default;
    friend RampCost operator+(const RampCost& a, const RampCost& b) {
        return {a.lacking + b.lacking, a.intervals + b.intervals, a.moved + b.moved};
    }
};

struct RampStacks {
    RampCost cost;
    std::vector<std::vector<std::size_t>> sets; // kinds, innermost first
    PlateCounts used;                           // of each kind the most at once
    bool proven;
};

inline constexpr std::size_t most_ramp_sets = 24;

// None when some set cannot be made of `most`. `each`: mass of each kind, heaviest first.
std::optional<RampStacks> solve_ramp_stacks(const std::vector<SideWanted>& sides,
                                            const std::vector<ExactMass>& each, const PlateCounts& most,
                                            int most_plates);

} // namespace amentum
