// The published methods of this module, each callable by itself (docs/methods/).
#pragma once

#include "values/method.h"

#include <vector>

namespace amentum::inference {

std::vector<Method> methods();

// The same, by topic.
std::vector<Method> methods_of_trajectories();
std::vector<Method> methods_of_changes();
std::vector<Method> methods_of_choices();
std::vector<Method> methods_of_models();

} // namespace amentum::inference
