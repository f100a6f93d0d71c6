// How many letters has a text? Code points of UTF-8 that are no space, tab or line break: ten spaces are no reason.
//
// Example: "a b\n" -> 2; "älter" -> 5
#pragma once

#include <algorithm>
#include <cstddef>
#include <string_view>

namespace amentum {

// Of a kept reason, in letters: proposal of this project, no source.
inline constexpr std::ptrdiff_t shortest_reason = 10;

inline std::ptrdiff_t letters_in(std::string_view text) {
    return std::count_if(text.begin(), text.end(), [](char c) {
        const bool begins_one = (static_cast<unsigned char>(c) & 0xC0) != 0x80;
        return begins_one && c != ' ' && c != '\t' && c != '\n' && c != '\r';
    });
}

} // namespace amentum
