// A made load in the words a coach would use to ask for it.
//
// A plate is called by its label without the word "plate" and without the kit's own unit: "45 lb plate" is
// "45" in a kit that speaks pounds, "20 kg plate" stays "20 kg" there. Two or more of one plate: "2 x 45".
//
// Example: two "45 lb plate" and one "2.5 lb plate", in pounds -> "2 x 45, 2.5"
#pragma once

#include "equipment/plate_sums.h"
#include "values/kit.h"

#include <string>
#include <vector>

namespace amentum {

std::string describe_plates(const std::vector<PlatesOnSide>& plates, MassUnit unit);

// "102.5 kg", "225 lb": in the unit given, to three decimals at most.
std::string describe_mass(Mass mass, MassUnit unit);

} // namespace amentum
