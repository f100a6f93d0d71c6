// How a number of a test's SI unit is said in this facility: factor, unit and decimals.
//
// kg -> lb or kg; m -> in or cm; m/s -> mph, m/s or km/h; degrees and newtons stay. Decimals are those that a step of
// the test's error makes worth printing: loads to 1, speeds to 1, lengths to 1, angles to 0, forces to 0.
// Exact factors: values/quantity.h.
#pragma once

#include "values/facility.h"
#include "values/test_kind.h"

#include <string>

namespace amentum {

struct ShownUnit {
    std::string unit;
    double factor; // shown = SI x factor
    int decimals;
};

ShownUnit shown_unit(TestUnit unit, const Facility& facility);
ShownUnit shown_mass(MassUnit unit);

} // namespace amentum
