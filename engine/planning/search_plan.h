// The plan of most points that a bounded search finds. Deterministic: the work is counted in moves, never in seconds,
// and the random stream is seeded, so the same problem and budget give the same plan on any machine and any number of
// threads.
//
// Simulated annealing over the sets of the week's template [Kirkpatrick1983], from several starts, in three rounds: first
// among all choices, then among those that a plan of the round before holds, so that the good parts of several plans come
// together. Where hours are enough, a start is searched before its sets have days (inside/search_week.h), because days only
// hide how little there is to decide; where that breaks limits, from nothing. Of several mesos the first is planned alone,
// then all from copies of it.
// What it cannot tell: how far from the best it is; bound_plan.h says that.
#pragma once

#include "planning/price_plan.h"

#include <cstdint>
#include <functional>
#include <optional>

namespace amentum {

struct SearchBudget {
    std::int64_t moves_of_a_start = 100'000; // of a meso
    int starts = 6; // of the first round; two thirds and a third of them in the second and third
    std::uint64_t seed = 1;
};

// None: no start ended without a breach. `from`: where the first start begins. `going` is asked now and then; false:
// stop with the best so far.
std::optional<PlanSets> search_plan(const BlockProblem&, const SearchBudget& = {},
                                    const PlanSets* from = nullptr,
                                    const std::function<bool(double share)>& going = {});

} // namespace amentum
