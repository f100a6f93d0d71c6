// What should the week of a meso hold, before anything of it has a day?
//
// The days hide how few decisions a week is: where hours are enough, most moves of a search only carry a line from one
// day to another. So a first search is made over the sets of the week alone (running_week.h), by the same annealing as
// search_plan.h, cold from the start; then its lines are laid on days, longest first, each where least is broken and the
// session is shortest. What does not fit is left to the search over days to mend.
// Work is counted in moves: the same input gives the same plan.
#pragma once

#include "planning/block_problem.h"

#include <cstdint>

namespace amentum {

// Of a problem of one meso. It may break limits. `hottest`: points lost now and then at the start;
// `among`: by choice, what may be in it; nothing given: all.
PlanSets week_before_days(const BlockProblem& problem, std::int64_t moves, double hottest, std::uint64_t seed,
                          const std::vector<char>& among = {});

} // namespace amentum
