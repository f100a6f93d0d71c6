// What a kept block gives each quality, by today's records: points, shares, what each line is worth and what holds it back.
//
// The request is made anew from today's records for the block's athlete, gym, days and minutes, so two blocks looked at on
// one day are weighed alike. None: nothing can be planned for this athlete today.
#pragma once

#include "operations/inside/block_answer.h"
#include "operations/inside/limiter_work.h"
#include "planning/price_block.h"

namespace amentum {

// `known`: the athlete's limiters when the caller has them already.
BlockAnswer priced_answer(Workplace::Inside&, const FacilityView&, const Block&,
                          std::optional<int> week = std::nullopt, const LimiterWork* known = nullptr);

} // namespace amentum
