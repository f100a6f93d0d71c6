// The range, strength and growth watch of one thrower, from every result held of them.
#pragma once

#include "guard_rails/check_growth.h"
#include "guard_rails/check_ranges.h"
#include "operations/inside/inside.h"

namespace amentum {

RangeWatch watch_ranges(const FacilityView&, const Athlete&, Date today);
GrowthWatch watch_growth(const FacilityView&, const Athlete&, Date today);

} // namespace amentum
