// What change is usual here over such a time? The prior against which one athlete's change is judged.
//
// d_j = delta_j + e_j, delta_j ~ N(m, s^2), e_j ~ N(0, s_j^2), over the changes of the roster between two
// test days. s^2 by the moment equation of Paule and Mandel: sum (d_j - m)^2 / (s^2 + s_j^2) = n - 1, with
// m the weighted mean [PauleMandel1982, from memory]. The prior handed back is for a new change: N(m, s^2 +
// Var m).
// Fewer than 6 changes: `otherwise` is taken as it is. s^2 is kept at a quarter of the variance of
// `otherwise` or more, because noise can hide all of the spread, and a prior without spread would call
// every change nothing. Both limits are proposals of this project, no source.
// Units: any one unit.
// What it cannot tell: whether those athletes trained alike.
#pragma once

#include "inference/trajectory.h"

#include <span>

namespace amentum {

struct RosterChange {
    double difference;
    double variance; // of its error, above 0
};

struct ChangePrior {
    StateOnDay change; // of one more true change
    int changes;       // of the roster that it rests on; 0 when `otherwise` was taken
};

ChangePrior estimate_change_prior(std::span<const RosterChange> roster, const StateOnDay& otherwise);

} // namespace amentum
