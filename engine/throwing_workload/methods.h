// The published methods of this module, each callable by itself (docs/methods/).
#pragma once

#include "values/method.h"

#include <vector>

namespace amentum::throwing_workload {

std::vector<Method> methods();

} // namespace amentum::throwing_workload
