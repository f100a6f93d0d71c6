// Which load can this gym really make, nearest to the one wanted, and with which plates?
//
// For a bar: total = bar + 2 x (plates on one side), over every multiset of the pairs owned (an odd plate stays on
// the rack). Exact bounded subset-sum over pairs, never greedy: with few pairs the greedy choice misses loads.
// For dumbbells, balls, columns: the nearest item or step. Sums are kept in whole milligrams, so that equal loads
// are equal. Ties between two loads equally near go to the lower; among plate sets of one load, fewest plates, then
// heaviest inside.
// Source: exact enumeration; checked against brute force (tests/laws/plate_loading_test.cpp).
// Units: kg. Range: target above 0 and at most 600 kg.
// Refuses: a kit without the bar or item (load_not_makeable); a target out of range.
// What it cannot tell: whether the sleeve is long enough for the plates, or the stamp on an unweighed plate is true.
//
// Example: bar 20 kg, plates 25, 20, 15, 10 kg in pairs, target 100 kg -> 25 + 15 a side.
#pragma once

#include "values/exercise.h"
#include "values/kit.h"
#include "values/refusal.h"

#include <optional>
#include <string>
#include <vector>

namespace amentum {

struct PlatesOnSide {
    std::string label;
    Mass each;
    int count;
};

struct MadeLoad {
    Mass total;                          // as the lift counts it: bar and plates; both dumbbells; force at the handle
    std::vector<PlatesOnSide> one_side;  // heaviest first (innermost); empty for anything but a bar
    std::string words;                   // "hex bar, high handles + 45, 25 a side"; "pair of 50 lb dumbbells"
};

struct LoadChoice {
    std::optional<MadeLoad> not_above;  // the heaviest that is not above the target; none when even the bar is
    std::optional<MadeLoad> above;      // the lightest above it; none at the top of what the gym has
    MadeLoad nearest;
};

// `item` names one bar (or column) of the kit by its label; left out, the one of that means that comes nearest.
Result<LoadChoice> solve_load(const Kit& kit, LoadMeans means, Mass target,
                              const std::optional<std::string>& item = std::nullopt);

// Every load the kit can make by that means, ascending, without repeats. For the planner and for "what to add".
Result<std::vector<MadeLoad>> all_loads(const Kit& kit, LoadMeans means,
                                        const std::optional<std::string>& item = std::nullopt);

}  // namespace amentum
