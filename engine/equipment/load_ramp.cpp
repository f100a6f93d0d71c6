#include "equipment/load_ramp.h"

#include <cassert>

namespace amentum {

Result<LoadRamp> solve_load_ramp(const Kit& kit, const RampWanted& wanted) {
    const auto ramp = bar_ramp(kit, wanted);
    if (!ramp)
        return ramp.refusal();
    const auto stock = stock_of(kit);
    if (!stock)
        return stock.refusal();
    const auto stacks =
        solve_ramp_stacks(ramp->sides, stock->each, most_on(*ramp, *stock), ramp->stacking.most_plates);
    assert(stacks); // every set is a load the kit makes
    return ramp_with(*ramp, *stock, *stacks, kit.unit);
}

} // namespace amentum
