#include "equipment/stamped_mass.h"

#include <cctype>
#include <charconv>
#include <string_view>

namespace amentum {
namespace {

bool letter(char c) {
    return std::isalpha(static_cast<unsigned char>(c)) != 0;
}

bool digit(char c) {
    return c >= '0' && c <= '9';
}

} // namespace

std::optional<Mass> stamped_mass(const std::string& label) {
    for (std::size_t at = 0; at < label.size(); ++at) {
        if (!digit(label[at]))
            continue;
        double number = 0;
        const auto [end, fault] =
            std::from_chars(label.data() + at, label.data() + label.size(), number, std::chars_format::fixed);
        if (fault != std::errc{})
            return std::nullopt;
        at = static_cast<std::size_t>(end - label.data());
        std::string_view rest = std::string_view(label).substr(at);
        if (rest.starts_with(' '))
            rest.remove_prefix(1);
        std::size_t length = 0;
        while (length < rest.size() && letter(rest[length]))
            ++length;
        const std::string_view unit = rest.substr(0, length);
        if (number > 0 && (unit == "lb" || unit == "lbs"))
            return Mass::pounds(number);
        if (number > 0 && unit == "kg")
            return Mass::kilograms(number);
    }
    return std::nullopt;
}

} // namespace amentum
