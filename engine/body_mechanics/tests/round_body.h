// A body of round numbers, no table: legs of 0.45 and 0.45 m, trunk 0.5 m, 80 kg.
#pragma once

#include "body_mechanics/body.h"

namespace amentum {

inline Body round_body() {
    const BodyLink shank{0.45, 4, 0.2, 0.05}, thigh{0.45, 11, 0.2, 0.2}, upper_arm{0.3, 2, 0.15, 0.02};
    const BodyLink forearm{0.27, 1.5, 0.12, 0.01}, hand{0.08, 0.5, 0.05, 0.001}, trunk{0.5, 40, 0.3, 2};
    return {{BodyTable::de_leva, Sex::male, Length::metres(1.8), Mass::kilograms(80)},
            {},
            shank,
            thigh,
            upper_arm,
            forearm,
            hand,
            trunk,
            0.8,
            0.07,
            0.27,
            1,
            0.005,
            {0.05, -0.035}};
}

} // namespace amentum
