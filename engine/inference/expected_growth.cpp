#include "inference/expected_growth.h"

#include "measurement/growth.h"

#include <algorithm>
#include <cassert>

namespace amentum {
namespace {

constexpr double grown_up = 18.0; // years: the end of the regression's range [Sgroi2015]

} // namespace

ExpectedGrowth expected_growth(double age_before, double age_after, std::optional<Length> taller) {
    assert(age_after >= age_before);
    const double years = std::min(age_after, grown_up) - std::min(age_before, grown_up);
    const Length none = Length::metres(0);
    if (years <= 0)
        return {Speed::metres_per_second(0), GrowthFrom::nothing};
    if (!taller)
        return {growth_velocity(years, none), GrowthFrom::age};
    return {growth_velocity(years, std::max(*taller, none)), GrowthFrom::age_and_stature};
}

} // namespace amentum
