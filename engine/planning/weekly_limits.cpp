#include "planning/weekly_limits.h"

namespace amentum {

// 1 to 3 sets under the youth rules [Faigenbaum2009] (from memory); the rest are proposals of this project,
// kept in the region where more sets a week still bring a little more strength [Ralston2017].
int most_sets(Part part, Loading loading) {
    if (part == Part::mobility)
        return 2;
    if (loading == Loading::youth || part == Part::shoulder || part == Part::trunk)
        return 3;
    if (loading == Loading::novice || part != Part::main_lift)
        return 4;
    return 5;
}

PlanLimits weekly_limits(Loading loading, double minutes) {
    const auto by = [loading](double youth, double novice, double trained) {
        return loading == Loading::youth ? youth : loading == Loading::novice ? novice : trained;
    };
    PlanLimits limits{};
    limits.minutes = minutes;
    const RegionLimit legs{by(6, 8, 10), by(9, 12, 18)};
    const RegionLimit pulling{by(6, 8, 10), by(9, 12, 16)};
    const RegionLimit pressing{by(4, 6, 8), by(8, 10, 12)};
    limits.regions = {legs, pulling, pressing, pressing, pressing, legs}; // in the order of Region
    limits.most_arm_sets = by(6, 8, 12);
    limits.most_leg_sets_before_start = by(4, 6, 8);
    return limits;
}

} // namespace amentum
