// How far a limit would have to give, in a coach's words, without a full stop: "4 minutes more in each session would do:
// 39 instead of 35".
#pragma once

#include "planning/exact_plan.h"

#include <map>

namespace amentum {

// `moved`: by number of the group (LinearRow::number), as far as each had to move; negative numbers for rows of their own.
std::string describe_relaxing(const BlockProblem&, LimitGroup, const std::map<int, double>& moved);
std::string describe_not_enough(LimitGroup);

} // namespace amentum
