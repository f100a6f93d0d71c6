// The facility itself: its name, and the units it speaks. Everything inside is SI; these are for people.
#pragma once

#include "values/enum_words.h"
#include "values/kit.h"

#include <string>

namespace amentum {

enum class SpeedUnit { mph, metres_per_second, kilometres_per_hour };
template <>
inline constexpr std::array<std::pair<SpeedUnit, std::string_view>, 3> words_of<SpeedUnit>{
    {{SpeedUnit::mph, "mph"},
     {SpeedUnit::metres_per_second, "m/s"},
     {SpeedUnit::kilometres_per_hour, "km/h"}}};

enum class LengthUnit { inches, centimetres };
template <>
inline constexpr std::array<std::pair<LengthUnit, std::string_view>, 2> words_of<LengthUnit>{
    {{LengthUnit::inches, "in"}, {LengthUnit::centimetres, "cm"}}};

struct Facility {
    std::string name;
    MassUnit mass_unit = MassUnit::lb;
    SpeedUnit speed_unit = SpeedUnit::mph;
    LengthUnit length_unit = LengthUnit::inches;
    std::string time_zone = {}; // of its calendar days, IANA: "America/Halifax"; empty: the computer's own

    friend bool operator==(const Facility&, const Facility&) = default;
};

} // namespace amentum
