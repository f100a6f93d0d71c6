// The units that files write beside their column names.
#pragma once

#include "recordings/force_recording.h"

#include <optional>
#include <string>
#include <string_view>

namespace amentum {

// "(N)", "[N]", "N" and the like, of force, mass, voltage, time, length or moment.
bool is_unit(std::string_view cell);
std::string bare_unit(std::string_view cell);       // without brackets
std::string unit_in_name(std::string_view name);    // "Fz [N]" is N; empty when none
std::optional<double> seconds_in(std::string_view); // of a unit of time: s, ms

// Newtons for one of the unit: N, kN, kg, lbf; nothing for volts, which need the plate's factor, and for unknown ones.
std::optional<double> newtons_in(std::string_view unit);
std::optional<ForceUnit> force_unit(std::string_view unit);

} // namespace amentum
