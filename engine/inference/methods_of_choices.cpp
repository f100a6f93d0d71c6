#include "inference/forecast_score.h"
#include "inference/methods.h"
#include "inference/value_of_information.h"

namespace amentum::inference {
namespace {

constexpr double least = 1e-9, most = 1e6;

Result<MethodAnswer> run_value_of_information(const MethodArguments& given) {
    const double a = given.number("sd_first"), b = given.number("sd_second"), r = given.number("correlation");
    const auto levers =
        compare_two_levers({given.number("mean_first"), a}, {given.number("mean_second"), b}, r);
    return MethodAnswer{{{"chance_first_best", levers.chance_first_best, "1"},
                         {"expected_best", levers.expected_best, "gain unit"},
                         {"value_of_knowing", levers.value_of_knowing, "gain unit"}}};
}

Result<MethodAnswer> run_crps_normal(const MethodArguments& given) {
    const Estimate forecast{given.number("mean"), given.number("sd")};
    return MethodAnswer{{{"crps", forecast_score(forecast, given.number("value")), "test unit"}}};
}

} // namespace

std::vector<Method> methods_of_choices() {
    return {
        {"value_of_information",
         "What is it worth to know which of two uncertain gains is the larger?",
         {{"mean_first", "expected gain of the first", -most, most},
          {"sd_first", "its standard deviation", least, most},
          {"mean_second", "expected gain of the second", -most, most},
          {"sd_second", "its standard deviation", least, most},
          {"correlation", "between the two", -0.999, 0.999, {}, "0"}},
         {"Clark1961", "Raiffa1961"},
         run_value_of_information},
        {"crps_normal",
         "How good was a forecast with its uncertainty, now that the value is known?",
         {{"mean", "of the forecast", -most, most},
          {"sd", "of the forecast", least, most},
          {"value", "what came", -most, most}},
         {"Gneiting2007"},
         run_crps_normal},
    };
}

} // namespace amentum::inference
