// The plan of most points that a bounded search finds. Deterministic: the work is counted in moves, never in seconds,
// and the random stream is seeded, so the same problem and budget give the same plan on any machine and any number of
// threads.
//
// Simulated annealing over the sets of the week's template [Kirkpatrick1983]: a set more or less, a line in, out or
// exchanged, a line moved to another session, a session copied from another meso, two of these at once. Breaches cost
// more and more as the temperature falls; only a plan without any is kept. Several starts, the best one kept.
// What it cannot tell: how far from the best it is; bound_plan.h says that.
#pragma once

#include "planning/price_plan.h"

#include <cstdint>
#include <functional>
#include <optional>

namespace amentum {

struct SearchBudget {
    std::int64_t moves_of_a_meso = 400'000; // of one start
    int starts = 3;
    std::uint64_t seed = 1;
};

// None: no start ended without a breach. `from`: where the first start begins. `going` is asked now and then; false:
// stop with the best so far.
std::optional<PlanSets> search_plan(const BlockProblem&, const SearchBudget& = {},
                                    const PlanSets* from = nullptr,
                                    const std::function<bool(double share)>& going = {});

} // namespace amentum
