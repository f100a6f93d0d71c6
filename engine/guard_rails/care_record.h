// What was said of pain, who cleared it, and which stops were answered for: read by every guard rail.
#pragma once

#include "values/arm_care.h"
#include "values/pain_block.h"

#include <span>

namespace amentum {

// Entries of any athletes; each check looks at its own athlete's. A region without a row in `pain_blocks` blocks everything.
struct CareRecord {
    std::span<const PainBlock> pain_blocks = {}; // data/pain_regions.csv
    std::span<const PainEntry> pains = {};
    std::span<const PainClearance> clearances = {};
    std::span<const StopAnswered> stops_answered = {};
};

} // namespace amentum
