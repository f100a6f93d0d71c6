// One line of a block as another gym makes it: what was written, what is done there, how much of the intent is kept.
//
// kept, a share from 0 to 1, by the first of these that can be known (`basis`):
//   lead_leg  demand of one leg at the bottom reached / wanted, H + K of equivalent_load.h: for two lifts on split feet, or
//             two of one pattern, whose postures body_mechanics solves for this body
//   load      (load made / load that would ask the same) x served, by usual maxima (lift_swap.h)
//   served    of what the catalogue says the first one gives to all its qualities, what the other gives too
// and times sets done / sets written where minutes ran short. Above what was wanted counts as 1: nothing is ever gained.
// What it cannot tell: what a share of intent is worth in velocity; `served` rests on shares of the catalogue, a proposal
// of this project without source; back and grip are named, never measured.
#pragma once

#include "values/block.h"
#include "values/enum_words.h"
#include "values/interval.h"

#include <optional>
#include <string>

namespace amentum {

enum class Change { kept, other_load, held_otherwise, other_exercise, lost };
template <>
inline constexpr std::array<std::pair<Change, std::string_view>, 5> words_of<Change>{
    {{Change::kept, "kept"},                     // word for word, or the same load of other plates
     {Change::other_load, "other_load"},         // the same exercise at what this gym makes
     {Change::held_otherwise, "held_otherwise"}, // the same lift, the load held in another way
     {Change::other_exercise, "other_exercise"},
     {Change::lost, "lost"}}};

enum class IntentBasis { lead_leg, load, served };
template <>
inline constexpr std::array<std::pair<IntentBasis, std::string_view>, 3> words_of<IntentBasis>{
    {{IntentBasis::lead_leg, "lead_leg"}, {IntentBasis::load, "load"}, {IntentBasis::served, "served"}}};

// The load that would ask the same, as the other exercise counts its load.
struct EqualLoad {
    Mass load;
    double standard_error; // kg; 0 for the same exercise, where nothing is carried over
    IntentBasis by;        // lead_leg: body_mechanics; load: usual maxima
};

struct RetargetedLine {
    BlockLine from;
    std::optional<BlockLine> to; // none: lost
    Change change = Change::lost;
    IntentBasis basis = IntentBasis::served;
    double kept = 0;
    Interval kept_band = {
        0, 0};        // 80 %; both ends `kept` where nothing was carried over or the basis is `served`
    double reach = 1; // load or demand made over wanted; 1 where loads cannot be compared
    double served = 0;
    bool loads_compared = false;
    std::optional<EqualLoad> equal = {};
    std::optional<Mass> aimed =
        {}; // the load looked for: `equal`, or less where something else gives out first
    std::string limit =
        {}; // "grip", "upper back", "the heaviest here", "the gap between the loads here"; empty: none bound
    std::string loss = {};  // what is lost, a whole sentence; empty when nothing is
    std::string to_do = {}; // what makes up for some of it, a whole sentence; may be empty
};

} // namespace amentum
