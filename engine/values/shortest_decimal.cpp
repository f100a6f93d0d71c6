#include "values/shortest_decimal.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

namespace amentum {

std::string format_shortest(double x) {
    std::array<char, 400> room; // the longest fixed double has 1 + 309 + 1 + 17 characters
    const auto end =
        std::to_chars(room.data(), room.data() + room.size(), x == 0 ? 0.0 : x, std::chars_format::fixed);
    return {room.data(), end.ptr};
}

std::string format_fixed(double x, int decimals) {
    std::array<char, 400> room;
    const auto end =
        std::to_chars(room.data(), room.data() + room.size(), x, std::chars_format::fixed, decimals);
    std::string text(room.data(), end.ptr);
    const bool zero = text.find_first_of("123456789") == std::string::npos;
    if (zero && text.front() == '-')
        text.erase(0, 1);
    return text;
}

std::optional<double> parse_number(std::string_view text, DecimalMark mark) {
    std::string plain(text);
    if (mark == DecimalMark::comma) {
        if (plain.find('.') != std::string::npos)
            return std::nullopt;
        std::replace(plain.begin(), plain.end(), ',', '.');
    }
    const char* first = plain.data() + (plain.starts_with('+') ? 1 : 0);
    const char* last = plain.data() + plain.size();
    double x = 0;
    const auto end = std::from_chars(first, last, x);
    if (plain.empty() || end.ec != std::errc{} || end.ptr != last || !std::isfinite(x))
        return std::nullopt;
    return x;
}

} // namespace amentum
