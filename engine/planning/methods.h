// The published methods of this module that can be called by themselves (values/method.h).
#pragma once

#include "values/method.h"

#include <vector>

namespace amentum {
namespace planning {

std::vector<Method> methods();

}  // namespace planning
}  // namespace amentum
