#include "equipment/load_words.h"

#include "values/shortest_decimal.h"

#include <string_view>

namespace amentum {
namespace {

std::string_view without_ending(std::string_view text, std::string_view ending) {
    return text.size() > ending.size() && text.ends_with(ending) ? text.substr(0, text.size() - ending.size())
                                                                 : text;
}

std::string plate_word(std::string_view label, MassUnit unit) {
    const auto stamp = without_ending(without_ending(label, " plates"), " plate");
    return std::string(without_ending(stamp, unit == MassUnit::lb ? " lb" : " kg"));
}

} // namespace

std::string describe_plates(const std::vector<PlatesOnSide>& plates, MassUnit unit) {
    std::string words;
    for (const auto& plate : plates) {
        if (!words.empty())
            words += ", ";
        if (plate.count > 1)
            words += std::to_string(plate.count) + " x ";
        words += plate_word(plate.label, unit);
    }
    return words;
}

std::string describe_mass(Mass mass, MassUnit unit) {
    std::string number = format_fixed(unit == MassUnit::lb ? mass.pounds() : mass.kilograms(), 3);
    number.erase(number.find_last_not_of('0') + 1);
    if (number.ends_with('.'))
        number.pop_back();
    return number + (unit == MassUnit::lb ? " lb" : " kg");
}

} // namespace amentum
