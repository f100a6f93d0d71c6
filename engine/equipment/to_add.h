// What could this gym add, so that a load it cannot make comes within reach?
//
// Tried, one at a time: a further pair of each standard plate and micro-plate of the kit's unit. A suggestion
// brings the heaviest load not above the target to the target itself, or to within 0.5 % below it where it
// was further off. Exact ones first, then the nearer, then the lighter plate; three at most. An empty answer:
// the load is already made, or no one pair helps.
// Standard plates: the discs of international weightlifting, 0.5 to 25 kg [IwfRules]; pound plates and
// micro-plates: common practice, no source. The 0.5 % is a proposal of this project, no source.
// Range and refusals: those of solve_load; means without pairs of plates are refused (method_does_not_apply).
// What it cannot tell: the price, the sleeve's length, or whether half a percent matters to the athlete.
//
// Example: bar 20 kg, pairs 20, 15, 10; target 62.5 kg (60 is made) -> a pair of 1.25 kg plates.
#pragma once

#include "equipment/load_table.h"

namespace amentum {

struct Addition {
    std::string what; // "a pair of 1.25 kg plates"
    Mass each;
    MadeLoad would_make;
};

Result<std::vector<Addition>> solve_to_add(const Kit& kit, LoadMeans means, Mass target,
                                           const std::optional<std::string>& item = std::nullopt);

} // namespace amentum
