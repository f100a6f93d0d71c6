// Which one thing would restore most of a block's intent in a gym that falls short of it?
//
// Tried one at a time, each by making the whole block again with it: a pair of dumbbells heavier than the heaviest, in steps
// of 5 lb to 100 lb (2.5 kg to 50 kg); a pair of the usual large plates; and what an exercise lost or replaced here lacks,
// when that is one item: a bench, a pull-up bar, a band, a column (1 : 1, to 200 lb), a ball of the mass written. Sizes,
// bars and columns as usual ones: common practice, no source. Of dumbbells the lightest pair that brings as much as the
// heaviest, within one per cent of the block. Shown when it restores one per cent or more; best first, three at most.
// What it cannot tell: prices, room, ceilings.
//
// Example: a garage with dumbbells to 50 lb -> "a pair of 80 lb dumbbells".
#pragma once

#include "planning/retarget_block.h"

#include <functional>

namespace amentum {

using KeptWith = std::function<double(const Kit&)>; // the block's share kept in this kit

std::vector<Purchase> worth_buying(const Kit& kit, const RetargetedBlock& made,
                                   std::span<const Exercise> catalogue, const KeptWith& kept_with);

} // namespace amentum
