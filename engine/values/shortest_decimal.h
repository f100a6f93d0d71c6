// Numbers as text: the shortest decimal that reads back as the same double, never an exponent where a person reads.
//
// format_shortest(97.5) == "97.5"; format_fixed(97.456, 1) == "97.5"; format_fixed never prints "-0".
// parse_number reads a whole text as one finite number, with '.' or, when asked, ',' as the decimal mark.
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace amentum {

std::string format_shortest(double x);
std::string format_fixed(double x, int decimals);

enum class DecimalMark { point, comma };
std::optional<double> parse_number(std::string_view text, DecimalMark mark = DecimalMark::point);

} // namespace amentum
