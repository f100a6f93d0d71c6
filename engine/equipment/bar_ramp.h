// One bar, its sets in order, and the plates of the kit that could stand on it: what the ramp searches work on.
//
// One bar serves all sets: the one named, or the one that comes nearest to the heaviest set. A set is the load
// nearest to the one wanted that the whole kit can make with that bar, of two equally near the lower.
// Units: ExactMass of one side; plates are counted singly in the stock, and a bar takes `stacks` of each.
// Refuses: means without plates (method_does_not_apply), no set or more than 24, a load out of range, more
// than 32 different plate masses; otherwise as solve_load.
//
// Example: straight bar 45 lb, sets 95, 135 lb -> sides of 25 and 45 lb.
#pragma once

#include "equipment/load_table.h"
#include "equipment/plates_of_kit.h"
#include "equipment/ramp_stacks.h"

#include <optional>
#include <string>
#include <vector>

namespace amentum {

struct RampWanted {
    LoadMeans means;
    std::optional<std::string> item;
    std::vector<Mass> loads; // as the lift counts them
};

struct PlateStock {
    std::vector<std::string> labels;
    std::vector<ExactMass> each; // heaviest first
    std::vector<int> singly;     // how many plates there are
};

struct BarRamp {
    RampWanted wanted;
    std::string item; // label of the bar
    ExactMass bar;    // what stands under the plates
    Stacking stacking;
    std::vector<MadeLoad> usual; // of each set: fewest plates, heaviest inside
    std::vector<SideWanted> sides;
};

Result<PlateStock> stock_of(const Kit& kit);
Result<BarRamp> bar_ramp(const Kit& kit, const RampWanted& wanted);

// The most of each kind that could stand on one stack of this bar.
PlateCounts most_on(const BarRamp& ramp, const PlateStock& stock);

struct RampSet {
    Mass wanted;
    MadeLoad load; // plates innermost first
    int moves;     // plates handled on one side, from the set before
};

struct LoadRamp {
    std::string item;
    int stacks; // sides that take plates: 2, or 1 for a landmine, belt or sled
    std::vector<RampSet> sets;
    int strip;       // plates taken off one side after the last set
    int moves;       // of one side, from the empty bar to the empty bar
    int usual_moves; // the same sets with fewest plates, heaviest inside
    bool proven;     // no stacking of these loads needs fewer
};

LoadRamp ramp_with(const BarRamp& ramp, const PlateStock& stock, const RampStacks& stacks, MassUnit unit);

} // namespace amentum
