// Names in a sentence: at most six, then how many more. listed_shortly({"a", "b"}) == "a, b".
#pragma once

#include <string>
#include <vector>

namespace amentum {

inline std::string listed_shortly(const std::vector<std::string>& names) {
    constexpr std::size_t most = 6;
    std::string text;
    for (std::size_t i = 0; i < names.size() && i < most; ++i)
        text += (i ? ", " : "") + names[i];
    if (names.size() > most)
        text += " and " + std::to_string(names.size() - most) + " more";
    return text;
}

} // namespace amentum
