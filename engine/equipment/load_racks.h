// Several racks at once on one stock of plates: which plates go to which rack, and in which order.
//
// Racks work at their own pace, so a plate given to a rack stays there for the session: of each kind the most a
// rack has on at once, added over the racks (twice for bars with two sides), is not above what the gym owns. The
// bars of one rack are used one after the other and share that rack's plates.
// Sought are the fewest handlings of all racks together:
//   1. every order of the racks: each in turn is stacked exactly (ramp_stacks.h) from what is left;
//   2. from all racks stacked alone, cheapest first: where a kind is short, some rack must do with one plate less
//      of it, so one branch for each rack; the first that fits has the fewest handlings there are.
// Found by 2, or as cheap as the cheapest branch left open: `proven`. After 400 branches the best found stands,
// `proven` is false, and `at_least` is what no answer can be below.
// When nothing fits, the rack of least priority (the last) may be one smallest step lighter in each set, never
// heavier; when that does not do, the one before it as well, and so on; the answer names them. When that does not
// help either it is refused, naming the plates that are short.
// Source: own search, equal to every joint stacking on small kits (tests/laws/load_racks_test.cpp).
// Range and refusals: one to four racks; those of bar_ramp.h; more racks on a bar than the kit has of it
// (hex bars whose labels agree up to the comma are one bar with two heights).
// What it cannot tell: that two racks could swap plates between sets because one of them is waiting.
//
// Example: two racks want 45 a side and the gym has one pair: the second gets 35 and 10, or is refused.
#pragma once

#include "equipment/bar_ramp.h"

#include <string>
#include <vector>

namespace amentum {

struct RackWanted {
    std::string name;
    std::vector<RampWanted> bars; // one after the other
};

struct LoadedRack {
    std::string name;
    std::vector<LoadRamp> bars;
    int moves; // of one side, all bars
    int usual_moves;
    std::vector<PlatesOnSide> plates; // single plates to put beside the rack, heaviest first
};

struct ShortPlate {
    std::string label;
    int wanted; // single plates, when each rack is stacked as if it were alone
    int owned;
};

struct LoadedRacks {
    std::vector<LoadedRack> racks; // in the order asked
    int moves;
    int usual_moves; // fewest plates, heaviest inside, as if each rack had all plates
    int at_least;    // no answer for these loads has fewer moves
    bool proven;
    std::vector<ShortPlate> contested; // kinds the racks would want more of than there are
    std::vector<std::string>
        lightened; // racks whose loads may be lower, so that all fit; the last ones asked
};

Result<LoadedRacks> solve_load_racks(const Kit& kit, const std::vector<RackWanted>& racks);

} // namespace amentum
