// The published methods of this module, each callable by itself (docs/methods/).
#pragma once

#include "values/method.h"

#include <vector>

namespace amentum::measurement {

std::vector<Method> methods();

// The same, by topic.
std::vector<Method> methods_of_lifts();
std::vector<Method> methods_of_balls();
std::vector<Method> methods_of_bodies();
std::vector<Method> methods_of_errors();
std::vector<Method> methods_of_units();
std::vector<Method> methods_of_repeats();
std::vector<Method> methods_of_sides();
std::vector<Method> methods_of_lines();

} // namespace amentum::measurement
