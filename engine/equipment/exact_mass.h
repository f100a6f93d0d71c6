// Masses as whole numbers, so that equal loads are equal and sums have no rounding.
//
// Unit: a tenth of a microgram (1e-10 kg). In it a quarter of a pound (0.1133980925 kg) and a milligram are
// both whole numbers [NistSp811, appendix B.8], so lb and kg plates mix exactly. A double holds 600 kg to
// finer than this unit.
// What it cannot tell: more than the scale that weighed the plate.
//
// Example: exact_mass(Mass::pounds(45)) == 204116566500
#pragma once

#include "values/quantity.h"

#include <cmath>
#include <cstdint>

namespace amentum {

using ExactMass = std::int64_t;

inline constexpr double exact_units_per_kilogram = 1e10;

inline ExactMass exact_mass(Mass mass) {
    return static_cast<ExactMass>(std::llround(mass.kilograms() * exact_units_per_kilogram));
}

inline Mass mass_of(ExactMass units) {
    return Mass::kilograms(static_cast<double>(units) / exact_units_per_kilogram);
}

} // namespace amentum
