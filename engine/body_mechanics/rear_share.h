// How much of the vertical force does the rear foot carry?
//
//   rear_foot_raised_split_squat  0.1564, SD 0.036: the lead foot carried 84.36 +- 3.6 % of 715 repetitions of 26 men at
//                                 5RM loads, a little more with heavier ones (rho 0.25) [Helme2020]
//   split_squat, lunge            0.25 [McCurdy2017]; no spread published, Helme2020's lent (proposal)
//   step_up                       0: the rear foot has just left the floor (proposal); Helme2020's spread lent upward
// Two feet on the ground leave two forces unknown that statics cannot find; this share and a level rear force of zero are
// the usual assumption. Measure with two plates and give rear_share to do better.
#pragma once

#include "body_mechanics/setup.h"
#include "measurement/split_squat.h"

namespace amentum {

struct RearShare {
    double share; // of the vertical force under both feet
    double sd;
};

// None for lifts on two feet side by side and pull-ups.
constexpr std::optional<RearShare> rear_share_of(Lift lift) {
    switch (lift) {
    case Lift::rear_foot_raised_split_squat:
        return RearShare{1 - lead_share_rear_raised, lead_share_sd};
    case Lift::split_squat:
    case Lift::lunge:
        return RearShare{1 - lead_share_on_floor, lead_share_sd};
    case Lift::step_up:
        return RearShare{0, lead_share_sd};
    default:
        return std::nullopt;
    }
}

} // namespace amentum
