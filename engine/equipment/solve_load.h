// Which load can this gym really make, nearest to the one wanted, and with which plates?
//
//   means             what the load counts
//   a bar             bar + 2 x (plates on one side), every multiset of pairs owned; an odd plate is left
//   landmine          half of a straight bar + the plates on its one sleeve, each counted singly: what the
//                     hands hold when a level, even bar is held at its end (statics of a lever; proposal of
//                     this project)
//   dumbbell_pair     both dumbbells, of one mass
//   dumbbell_single   one dumbbell or kettlebell
//   column            handle/stack ratio x stack, at each step up to the most
//   ball              the ball
//   added_plate       plates on the belt, 4 at most (proposal of this project, no source)
//   sled              the plates on it, not the sled
//   band, body        no load: refused
// Exact bounded subset-sum over the plates owned, never greedy: with few pairs the greedy choice misses
// loads. Sums are kept in whole tenths of a microgram (exact_mass.h), so that equal loads are equal, in lb
// and kg alike.
// Two equally near loads: the lower. Plate sets of one load: fewest plates, then heaviest inside. Two bars:
// fewest plates, then the first of the kit.
// Source: exact enumeration; checked against brute force (tests/laws/plate_loading_test.cpp).
// Units: kg. Range: target above 0 and at most 600 kg; a kit of more than 65536 distinct loads is thinned to
// 5 g.
// Refuses: a kit without the bar, item or belt (load_not_makeable); a target out of range; an item without a
// mass (missing_field); band and body work (method_does_not_apply).
// What it cannot tell: whether the sleeve is long enough for the plates, or the stamp on an unweighed plate
// is true.
//
// Example: bar 20 kg, plates 25, 20, 15, 10 kg in pairs, target 100 kg -> 25 + 15 a side.
#pragma once

#include "equipment/load_table.h"

#include <optional>
#include <string>
#include <vector>

namespace amentum {

// `item` names one bar (or column, dumbbell, ball) of the kit: by its whole label, or, when no label is just
// that, by a text the label contains ("low handles"). Left out, whichever item of that means comes nearest.
Result<LoadChoice> solve_load(const Kit& kit, LoadMeans means, Mass target,
                              const std::optional<std::string>& item = std::nullopt);

// Every load the kit can make by that means, ascending, without repeats. For the planner and for "what to
// add".
Result<std::vector<MadeLoad>> all_loads(const Kit& kit, LoadMeans means,
                                        const std::optional<std::string>& item = std::nullopt);

} // namespace amentum
