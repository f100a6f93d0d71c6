// How much faster does a thrower below 18 become by growing alone, between two days?
//
// growth_velocity of measurement/growth.h [Sgroi2015: +1.5 mph a year of age, +1.2 mph an inch of stature,
// partial slopes of one regression], over the years before the 18th birthday only. Stature lost counts as
// none. Without the change of stature only the years are counted, which is too little in a growth spurt:
// `from` says which of the two.
// Units: Speed.
// Range: the regression's athletes were 9 to 18 years old.
// What it cannot tell: this child's growth; the slopes are between children, and no error was published
// with them. A gain of the same size is not a sign that training worked.
//
// Example: from 13.0 to 14.0 years and 2 in taller: 3.9 mph.
#pragma once

#include "values/quantity.h"

#include <optional>

namespace amentum {

enum class GrowthFrom { nothing, age, age_and_stature };

struct ExpectedGrowth {
    Speed velocity;
    GrowthFrom from;
};

ExpectedGrowth expected_growth(double age_before, double age_after,
                               std::optional<Length> taller = std::nullopt);

} // namespace amentum
