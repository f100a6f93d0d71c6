// Which weeks of a block have been begun?
#pragma once

#include "operations/inside/inside.h"

#include <set>

namespace amentum {

// Weeks with a logged set (planning/block_so_far.h). A set of this block whose exercise is in no line of it counts by its day.
std::set<int> begun_weeks(const FacilityView&, const Block&);

} // namespace amentum
