// The search behind load_racks.h: stacks for every rack that together need no more plates than there are.
//
// What is sought, how, and what is proven: load_racks.h. A rack's plates may be capped, kind by kind; with a cap,
// its bars are stacked exactly, and a branch of the search is a cap for each rack.
// Range: at most 400 branches. What it cannot tell: load_racks.h.
//
// Example: racks that fit when each is stacked alone are found at the first look, proven.
#pragma once

#include "equipment/bar_ramp.h"

#include <optional>
#include <string>
#include <vector>

namespace amentum {

struct RackOfBars {
    std::string name;
    std::vector<BarRamp> bars;
};

struct RackStacks {
    RampCost cost;
    std::vector<RampStacks> bars;
    std::vector<int> singly; // single plates of each kind that stay at the rack
    bool proven;             // no stacking within the caps has fewer handlings
};

struct RackSearch {
    std::optional<std::vector<RackStacks>> found;
    RampCost at_least;       // nothing that fits costs less; nothing when that is not known
    bool proven;             // found costs no more than that
    bool complete;           // every branch was looked into; when nothing was found, nothing fits
    std::vector<int> wanted; // single plates of each kind when each rack is stacked alone
};

// orders: only every order of the racks, each stacked from what is left; branches: then the rest as well.
enum class Looking { orders, branches };

RackSearch search_racks(const std::vector<RackOfBars>& racks, const PlateStock& stock,
                        Looking looking = Looking::branches);

} // namespace amentum
