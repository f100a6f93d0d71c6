// The linear model with some of the coach's limits given up, or giving way.
//
//   loosened   without the rows of some groups; asks only whether there is a plan
//   yielding   the rows of one group give way, each number of the group by a column of its own; what is maximised is less
//              the sum of these: how far the limits must be moved at least
// A line whose own fewest and most sets are given up still has 1 to loosest_sets.
#pragma once

#include "planning/inside/linear_writer.h"

#include <bitset>
#include <map>

namespace amentum {

using Groups = std::bitset<limit_groups>;

LinearModel loosened(LinearModel, const Groups& given_up);

struct YieldingModel {
    LinearModel model;
    std::map<int, int>
        columns; // number of the group -> column; rows without a number have negative ones of their own
};
YieldingModel yielding(LinearModel, LimitGroup);

} // namespace amentum
