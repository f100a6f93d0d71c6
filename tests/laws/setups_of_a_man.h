// An 80 kg, 1.80 m man of table de_leva and two of his set-ups, for tests of searches, bands and equivalent loads.
#pragma once

#include "body_mechanics/solve_pose.h"

#include "on_disk_tables.h"

namespace amentum {

inline Body body_of(Sex sex, double stature, double mass) {
    return *scale_body(segments_on_disk(),
                       {BodyTable::de_leva, sex, Length::metres(stature), Mass::kilograms(mass)});
}
inline Body man() {
    return body_of(Sex::male, 1.80, 80);
}

inline Setup raised(Hold hold = Hold::straight_bar, double load = 60) {
    Setup setup{Lift::rear_foot_raised_split_squat, hold, Mass::kilograms(load)};
    setup.stance = Length::metres(0.80);
    setup.pad_height = Length::metres(0.40);
    setup.thigh = Angle::degrees(90);
    setup.trunk_lean = Angle::degrees(20);
    return setup;
}

inline Setup hex() {
    Setup setup{Lift::hex_bar_deadlift, Hold::hex_bar, Mass::kilograms(140)};
    setup.handle_height = Length::metres(0.3);
    setup.shin_lean = Angle::degrees(20);
    return setup;
}

} // namespace amentum
