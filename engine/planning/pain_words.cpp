#include "planning/pain_words.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <string>

namespace amentum {
namespace {

constexpr std::array<std::string_view, 14> beginnings{"pain",  "hurt",  "ache",   "aching",  "numb",
                                                      "tingl", "sharp", "swell",  "swollen", "pinch",
                                                      "sting", "burn",  "popped", "popping"};
constexpr std::array<std::string_view, 3> other_words{"paint", "sharpen", "number"};

bool letter(char c) {
    return std::isalpha(static_cast<unsigned char>(c)) || static_cast<unsigned char>(c) >= 0x80;
}

bool of_pain(std::string_view word) {
    const auto begins = [&](std::string_view start) { return word.starts_with(start); };
    return std::any_of(beginnings.begin(), beginnings.end(), begins) &&
           std::none_of(other_words.begin(), other_words.end(), begins);
}

} // namespace

bool speaks_of_pain(std::string_view note) {
    std::string word;
    for (const char c : note) {
        if (letter(c)) {
            word += static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
            continue;
        }
        if (of_pain(word))
            return true;
        word.clear();
    }
    return of_pain(word);
}

} // namespace amentum
