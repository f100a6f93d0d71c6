// The units a file may speak, each with the way to SI and back that quantity.h uses, so that the bits agree.
#pragma once

#include "records/record_columns.h"

#include <span>

namespace amentum {

struct FileUnit {
    const char* suffix; // of the column: "lb"; empty for a plain fraction
    const char* shown;  // after a number: "lb", "m/s"
    double (*to_si)(double);
    double (*from_si)(double);
};

// The first is the SI unit that exports write. Empty for columns that hold no quantity.
std::span<const FileUnit> units_of(Holds holds);

bool holds_number(Holds holds);

// Four significant digits, as people say a converted number: 1323, -220.5, 0.3048.
std::string four_digits(double x);

} // namespace amentum
