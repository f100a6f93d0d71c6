// The published methods of this module, each callable by itself (docs/methods/). A whole trace is measured by
// measure_trace, whose method is docs/methods/force_traces.md.
#pragma once

#include "values/method.h"

#include <vector>

namespace amentum::force_traces {

std::vector<Method> methods();

} // namespace amentum::force_traces
