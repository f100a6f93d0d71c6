#include "values/identifier.h"

#include <cctype>

namespace amentum {

std::string slug(std::string_view name) {
    std::string text;
    for (const char c : name) {
        const auto u = static_cast<unsigned char>(c);
        const bool kept = u >= 128 || std::isalnum(u);
        if (kept)
            text += u >= 128 ? c : static_cast<char>(std::tolower(u));
        else if (!text.empty() && text.back() != '-')
            text += '-';
    }
    while (!text.empty() && text.back() == '-')
        text.pop_back();
    return text;
}

} // namespace amentum
