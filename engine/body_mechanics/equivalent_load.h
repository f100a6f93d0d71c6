// Which load of one set-up asks the same of the lead leg as another does?
//
// Demand, of one lead leg at the bottom of the lift:
//   leg    H + K, what hip and knee must do together: by virtual work the work for each radian the thigh turns
//   hip    H alone        knee   K alone
// In a split lift of one depth, H + K rests on the force under the lead foot and the thigh's level length alone: the same
// load asks the same of the leg however it is held, and only the split between hip and knee moves. Ask for hip or knee to
// keep one of them. The posture is solved anew for every load.
// The two may be different lifts; one leg is one leg in both, the half of a squat's two.
// Band: both demands rest on the same body, rear share and pressure, so each of these is moved in both at once, or in the
// one that rests on it (a squat has no rear share); the load's place on the trunk in each by itself. The load is solved
// again every time; errors add in squares as in pose_band.h. A cause that no load answers when moved either way is left
// out of the band and named in `not_moved`: the band is then too narrow.
// Refusals: no_such_posture of either; method_does_not_apply when one is a pull-up, or when the other needs less than no
// load (lighter than the body alone) or more than 500 kg.
// What it cannot tell: grip, balance and upper back, which end a set before the leg does; a pair of 100-lb dumbbells is
// 200 lb, and grip gives out first (common practice, no source).
#pragma once

#include "body_mechanics/pose_band.h"

namespace amentum {

enum class Demand { leg, hip, knee };
template <>
inline constexpr std::array<std::pair<Demand, std::string_view>, 3> words_of<Demand>{
    {{Demand::leg, "leg"}, {Demand::hip, "hip"}, {Demand::knee, "knee"}}};

// What a solved posture asks of one leg, N m. Contract: the pose has a lead leg.
double demand_of_leg(const Pose& pose, Demand demand = Demand::leg);

struct EquivalentLoad {
    Mass load;
    double standard_error; // kg
    double demand;         // N m of one lead leg, in both
    Pose from;
    Pose to;
    std::vector<Cause> not_moved;
};

// The load alone that asks `demand` (N m of one leg) of `to`, without its band: for a caller that tries many set-ups.
Result<Mass> solve_load_of_demand(const Body& body, const Setup& to, double demand,
                                  Demand kind = Demand::leg);

// `to` with any load: its own is what is solved.
Result<EquivalentLoad> solve_equivalent_load(const Body& body, const Setup& from, const Setup& to,
                                             Demand demand = Demand::leg);

} // namespace amentum
