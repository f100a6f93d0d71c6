// The methods of this module that can be called by themselves (docs/methods/).
#pragma once

#include "values/method.h"

#include <vector>

namespace amentum::planning {

std::vector<Method> methods();

} // namespace amentum::planning
