// A kept block as sheets and pages show it: sessions in order, loads in the gym's unit, the findings beside it.
#pragma once

#include "operations/inside/inside.h"
#include "operations/plan_block.h"

namespace amentum {

BlockAnswer block_answer(const Workplace::Inside&, const FacilityView&, const Block&,
                         std::optional<int> week = std::nullopt);

} // namespace amentum
