// Which mass does an item's label name?
//
// The first number that is followed by lb, lbs or kg, with or without a space: what is cast or printed on it.
// Refuses nothing: a label without a mass ("straight bar", "red band") names none.
// What it cannot tell: what the item weighs.
//
// Example: stamped_mass("35 lb plate, old") == 35 lb; stamped_mass("hex bar, low handles") is none
#pragma once

#include "values/quantity.h"

#include <optional>
#include <string>

namespace amentum {

std::optional<Mass> stamped_mass(const std::string& label);

} // namespace amentum
