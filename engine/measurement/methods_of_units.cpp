#include "measurement/methods.h"
#include "values/quantity.h"

namespace amentum::measurement {
namespace {

Mass mass_of(double x, const std::string& unit) {
    if (unit == "lb")
        return Mass::pounds(x);
    if (unit == "oz")
        return Mass::ounces(x);
    return unit == "g" ? Mass::grams(x) : Mass::kilograms(x);
}

Speed speed_of(double x, const std::string& unit) {
    if (unit == "mph")
        return Speed::miles_per_hour(x);
    return unit == "km/h" ? Speed::kilometres_per_hour(x) : Speed::metres_per_second(x);
}

Length length_of(double x, const std::string& unit) {
    if (unit == "in")
        return Length::inches(x);
    if (unit == "ft")
        return Length::feet(x);
    return unit == "cm" ? Length::centimetres(x) : Length::metres(x);
}

Result<MethodAnswer> run_mass(const MethodArguments& given) {
    return MethodAnswer{{{"mass", mass_of(given.number("mass"), given.word("unit")).kilograms(), "kg"}}};
}

Result<MethodAnswer> run_speed(const MethodArguments& given) {
    return MethodAnswer{
        {{"speed", speed_of(given.number("speed"), given.word("unit")).metres_per_second(), "m/s"}}};
}

Result<MethodAnswer> run_length(const MethodArguments& given) {
    return MethodAnswer{{{"length", length_of(given.number("length"), given.word("unit")).metres(), "m"}}};
}

Result<MethodAnswer> run_body_weights(const MethodArguments& given) {
    const double weight = given.number("body_mass_kg") * Force::newtons_per_kilogram_force;
    return MethodAnswer{{{"body_weights", given.number("force_n") / weight, "1"}}};
}

} // namespace

std::vector<Method> methods_of_units() {
    const auto unit = [](std::vector<std::string> choices) {
        return MethodInput{"unit", "in which it is given", 0, 0, std::move(choices), {}};
    };
    return {
        {"mass_in_kilograms",
         "How many kilograms is this mass?",
         {{"mass", "the number", 0, 1e6}, unit({"lb", "oz", "g", "kg"})},
         {"NistSp811"},
         run_mass},
        {"speed_in_metres_per_second",
         "How many metres a second is this speed?",
         {{"speed", "the number", 0, 1000}, unit({"mph", "km/h", "m/s"})},
         {"NistSp811"},
         run_speed},
        {"length_in_metres",
         "How many metres is this length?",
         {{"length", "the number", 0, 1e6}, unit({"in", "ft", "cm", "m"})},
         {"NistSp811"},
         run_length},
        {"force_in_body_weights",
         "How many times body weight is this force?",
         {{"force_n", "the force", 0, 50000}, {"body_mass_kg", "of the athlete", 15, 250}},
         {"NistSp811"},
         run_body_weights},
    };
}

} // namespace amentum::measurement
