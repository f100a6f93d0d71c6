#include "measurement/day_value.h"

#include "measurement/measure_test.h"
#include "values/shortest_decimal.h"

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

struct SecondUnit {
    double of_one; // how many make one test unit
    const char* name;
};

std::optional<SecondUnit> second_unit(TestUnit unit) {
    switch (unit) {
    case TestUnit::kilogram:
        return SecondUnit{Mass::kilograms(1).pounds(), "lb"};
    case TestUnit::metre:
        return SecondUnit{Length::metres(1).inches(), "in"};
    case TestUnit::metre_per_second:
        return SecondUnit{Speed::metres_per_second(1).miles_per_hour(), "mph"};
    case TestUnit::degree:
    case TestUnit::newton:
    case TestUnit::watt:
    case TestUnit::one:
        return std::nullopt;
    }
    assert(!"every unit is looked at");
    return std::nullopt;
}

// At most three decimals, and none that are zero: 408.2, 0.37, 150.
std::string rounded(double x) {
    const double size = std::abs(x);
    const double step = size >= 100 ? 10 : (size >= 10 ? 100 : 1000);
    return format_shortest(std::round(x * step) / step);
}

std::string in_both_units(const std::string& text, double low, std::optional<double> high, TestUnit unit) {
    const std::string main = text + " " + word(unit);
    const auto second = second_unit(unit);
    if (!second)
        return main;
    const std::string to = high ? " to " + format_shortest(std::round(*high * second->of_one * 10) / 10) : "";
    return main + " (" + format_shortest(std::round(low * second->of_one * 10) / 10) + to + " " +
           second->name + ")";
}

} // namespace

double in_test_unit(const TestKind& kind, double error, double value) {
    return kind.scale == Scale::logarithmic ? error * std::abs(value) : error;
}

Result<Done> check_plausible(const TestKind& kind, double value, const std::string& field) {
    if (value >= kind.plausible_low && value <= kind.plausible_high)
        return Done{};
    const std::string allowed =
        in_both_units(rounded(kind.plausible_low) + " to " + rounded(kind.plausible_high), kind.plausible_low,
                      kind.plausible_high, kind.unit);
    const std::string given = in_both_units(rounded(value), value, std::nullopt, kind.unit);
    return Refusal{RefusalCode::out_of_range,
                   kind.name + ": " + given + " is outside what athletes show there, " + allowed +
                       ". Please check the " + field + " and its unit.",
                   field, given, allowed};
}

Result<TestResult> state_result(const TestKind& kind, const DayValue& day, TestResult about) {
    const double trial = in_test_unit(kind, kind.trial_error, day.value);
    const double between_days = in_test_unit(kind, kind.day_error, day.value);
    about.value = day.value;
    about.standard_error = std::hypot(between_days, trial / std::sqrt(day.averaged), day.method_error);
    about.trials = day.trials;
    about.method = day.method;
    about.warnings = day.warnings;
    about.sources = kind.sources;
    for (const auto& source : day.sources)
        if (std::find(about.sources.begin(), about.sources.end(), source) == about.sources.end())
            about.sources.push_back(source);
    return about;
}

} // namespace amentum
