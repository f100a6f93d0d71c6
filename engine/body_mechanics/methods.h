// The published methods of this module, each callable by itself (docs/methods/). They read the segment tables given.
#pragma once

#include "body_mechanics/segment_tables.h"
#include "values/method.h"

#include <vector>

namespace amentum::body_mechanics {

std::vector<Method> methods(const SegmentTables& tables);         // all of them
std::vector<Method> landing_methods(const SegmentTables& tables); // of an instant measured: lead leg, throw

} // namespace amentum::body_mechanics
