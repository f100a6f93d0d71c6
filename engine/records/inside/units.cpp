#include "records/inside/units.h"

#include "values/quantity.h"
#include "values/shortest_decimal.h"

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

constexpr double newtons_per_pound_force =
    Mass::kilograms_per_pound * Force::newtons_per_kilogram_force; // exact [NistSp811, appendix B.8]

double same(double x) {
    return x;
}

constexpr FileUnit masses[] = {
    {"kg", "kg", same, same},
    {"lb", "lb", [](double x) { return Mass::pounds(x).kilograms(); },
     [](double x) { return Mass::kilograms(x).pounds(); }},
    {"oz", "oz", [](double x) { return Mass::ounces(x).kilograms(); },
     [](double x) { return Mass::kilograms(x).ounces(); }},
    {"g", "g", [](double x) { return Mass::grams(x).kilograms(); },
     [](double x) { return Mass::kilograms(x).grams(); }},
};
constexpr FileUnit lengths[] = {
    {"m", "m", same, same},
    {"cm", "cm", [](double x) { return Length::centimetres(x).metres(); },
     [](double x) { return Length::metres(x).centimetres(); }},
    {"in", "in", [](double x) { return Length::inches(x).metres(); },
     [](double x) { return Length::metres(x).inches(); }},
    {"ft", "ft", [](double x) { return Length::feet(x).metres(); },
     [](double x) { return Length::metres(x).feet(); }},
};
constexpr FileUnit speeds[] = {
    {"ms", "m/s", same, same},
    {"mph", "mph", [](double x) { return Speed::miles_per_hour(x).metres_per_second(); },
     [](double x) { return Speed::metres_per_second(x).miles_per_hour(); }},
    {"kmh", "km/h", [](double x) { return Speed::kilometres_per_hour(x).metres_per_second(); },
     [](double x) { return x * 3.6; }},
};
constexpr FileUnit times[] = {
    {"s", "s", same, same},
    {"ms", "ms", [](double x) { return x / 1000; }, [](double x) { return x * 1000; }},
};
constexpr FileUnit angles[] = {{"deg", "deg", same, same}};
constexpr FileUnit forces[] = {
    {"n", "N", same, same},
    {"kg", "kg of force", [](double x) { return x * Force::newtons_per_kilogram_force; },
     [](double x) { return x / Force::newtons_per_kilogram_force; }},
    {"lb", "lb of force", [](double x) { return x * newtons_per_pound_force; },
     [](double x) { return x / newtons_per_pound_force; }},
};
constexpr FileUnit powers[] = {{"w", "W", same, same}};
constexpr FileUnit fractions[] = {
    {"", "", same, same},
    {"percent", "%", [](double x) { return x / 100; }, [](double x) { return x * 100; }},
};

} // namespace

std::span<const FileUnit> units_of(Holds holds) {
    switch (holds) {
    case Holds::mass:
        return masses;
    case Holds::length:
        return lengths;
    case Holds::speed:
        return speeds;
    case Holds::time:
        return times;
    case Holds::angle:
        return angles;
    case Holds::force:
        return forces;
    case Holds::power:
        return powers;
    case Holds::fraction:
        return fractions;
    case Holds::text:
    case Holds::date:
    case Holds::whole:
    case Holds::number:
        return {};
    }
    return {};
}

bool holds_number(Holds holds) {
    return holds != Holds::text && holds != Holds::date;
}

std::string four_digits(double x) {
    if (x == 0)
        return "0";
    const int whole_digits = static_cast<int>(std::floor(std::log10(std::abs(x)))) + 1;
    std::string text = format_fixed(x, std::clamp(4 - whole_digits, 0, 6));
    if (text.find('.') == std::string::npos)
        return text;
    text.erase(text.find_last_not_of('0') + 1);
    if (text.back() == '.')
        text.pop_back();
    return text;
}

} // namespace amentum
