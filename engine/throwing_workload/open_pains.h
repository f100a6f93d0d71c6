// Which pain entries are open on a day? Those felt on that day or before, without a clearance that holds by then.
//
//   open on D  =  date <= D,  and no clearance of the same athlete and number with date <= D
// One clearance is enough, and it answers for its own entry alone: pain felt again is another entry. A clearance dated before the
// pain it names clears nothing.
// Range: entries and clearances of any athletes, in any order; the answer keeps the order of the entries.
// What it cannot tell: pain nobody wrote down; whether whoever cleared it was right. The tool clears nobody.
//
// Example: an elbow noted on 2026-03-02, cleared on 2026-03-20: open from the 2nd to the 19th, both included.
#pragma once

#include "values/arm_care.h"

#include <span>
#include <vector>

namespace amentum {

std::vector<PainEntry> open_pains(std::span<const PainEntry> pains, std::span<const PainClearance> clearances,
                                  Date day);

} // namespace amentum
