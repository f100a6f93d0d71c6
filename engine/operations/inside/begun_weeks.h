// Which line of a block a logged set belongs to, and so which weeks have been begun.
#pragma once

#include "operations/inside/inside.h"

#include <set>

namespace amentum {

// The line a set of this block belongs to: the exercise's line of that day; done on another day, its nearest line. Null: the
// set is of another block, or of none and no line stands on its day.
const BlockLine* line_for(const Block&, const SetDone&);

// Weeks with a logged set. A set of this block whose exercise is in no line of it counts by its day.
std::set<int> begun_weeks(const FacilityView&, const Block&);

} // namespace amentum
