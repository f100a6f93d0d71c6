// Which load of one set-up asks the same of the lead leg as another does?
//
// Demand: the sum of extending moments at hip and knee of one lead leg, H + K, at the bottom of the lift. By virtual work
// it is the work the leg must do for each radian its thigh turns, whatever the trunk does; the split between hip and knee
// is reported beside it, because it may differ between the two.
// H + K of the other set-up is raised by bisection over its load, posture solved anew each time.
// Band: both demands move with the same assumptions (rear share, pressure, lengths), so each cause is moved in both at
// once and the load solved again; errors add in squares as in pose_band.h.
// Refusals: no_such_posture of either; method_does_not_apply when the other needs less than no load (lighter than the
// body alone) or more than 500 kg.
// What it cannot tell: grip, balance and upper back, which end a set before the leg does; a pair of 100-lb dumbbells is
// 200 lb, and grip gives out first (common practice, no source).
#pragma once

#include "body_mechanics/pose_band.h"

namespace amentum {

struct EquivalentLoad {
    Mass load;
    double standard_error; // kg
    double demand;         // N m, H + K of one lead leg in both
    Pose from;
    Pose to;
};

// `to` with any load: its own is what is solved.
Result<EquivalentLoad> solve_equivalent_load(const Body& body, const Setup& from, const Setup& to);

} // namespace amentum
