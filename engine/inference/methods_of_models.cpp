#include "inference/impulse_response.h"
#include "inference/methods.h"
#include "inference/slope_with_error.h"

#include "values/shortest_decimal.h"

#include <array>
#include <cmath>

namespace amentum::inference {
namespace {

constexpr double least = 1e-9, most = 1e6;

// As many tests as asked for, spread evenly over the days of training, the first on day 0.
std::vector<int> spread_tests(int tests, int days) {
    std::vector<int> on;
    for (int i = 0; i < tests; ++i)
        on.push_back(static_cast<int>(std::lround(static_cast<double>(days) * i / std::max(1, tests - 1))));
    return on;
}

Result<Done> add_errors(MethodAnswer& answer, const ImpulseResponse& response, const MethodArguments& given) {
    const auto& loads = given.list("loads");
    const double tests = given.number("tests");
    if (tests != std::floor(tests))
        return refuse_range("tests", tests, 5, 1000, "", "A whole number.");
    const auto days = spread_tests(static_cast<int>(tests), static_cast<int>(loads.size()));
    const auto errors = errors_of_a_fit(response, loads, days, given.number("test_error"));
    if (!errors)
        return errors.refusal();
    const std::array<const char*, 4> names{"lasting_gain", "passing_gain", "lasting_days", "passing_days"};
    const std::array<double, 4> values{response.lasting_gain, response.passing_gain, response.lasting_days,
                                       response.passing_days};
    double largest = 0;
    for (std::size_t k = 0; k < names.size(); ++k) {
        const double relative = errors->standard_error[k + 1] / std::abs(values[k]);
        largest = std::max(largest, relative);
        answer.outputs.push_back({std::string("relative_error_of_") + names[k], relative, "1"});
    }
    answer.outputs.push_back({"correlation_of_gains", errors->correlation_of_gains, "1"});
    if (largest > 0.5)
        answer.notes.push_back("Cannot tell: so many tests would leave an error of " +
                               format_fixed(100 * largest, 0) + " % in one of the four numbers.");
    return Done{};
}

Result<MethodAnswer> run_impulse_response(const MethodArguments& given) {
    const ImpulseResponse response{given.number("start"), given.number("lasting_gain"),
                                   given.number("passing_gain"), given.number("lasting_days"),
                                   given.number("passing_days")};
    if (!(response.lasting_days > response.passing_days))
        return refuse_range("lasting_days", response.lasting_days, response.passing_days, 1000, "d",
                            "The lasting effect must last longer than the passing one.");
    const double day = given.number("on_day");
    if (day != std::floor(day))
        return refuse_range("on_day", day, 0, 1e4, "", "A whole number.");
    if (given.has("tests") != given.has("test_error"))
        return refuse_missing(given.has("tests") ? "test_error" : "tests", "both or neither");
    MethodAnswer answer{
        {{"level", level_on_day(response, given.list("loads"), static_cast<int>(day)), "test unit"}}};
    if (const auto recovered = days_to_recover(response))
        answer.outputs.push_back({"days_to_recover", *recovered, "d"});
    if (const auto best = days_to_best(response))
        answer.outputs.push_back({"days_to_best", *best, "d"});
    if (given.has("tests"))
        if (const auto added = add_errors(answer, response, given); !added)
            return added.refusal();
    answer.notes.push_back("A calculation from the numbers given, not a prescription: no load should be "
                           "chosen by it.");
    return answer;
}

Result<MethodAnswer> run_slope_with_error(const MethodArguments& given) {
    const auto& x = given.list("x");
    const auto& y = given.list("y");
    if (x.size() != y.size())
        return Refusal{RefusalCode::wrong_type, "x and y must have as many numbers as each other.", "y",
                       std::to_string(y.size()), std::to_string(x.size())};
    const auto found = estimate_slope_with_error(x, y, given.number("x_error"));
    if (!found)
        return found.refusal();
    return MethodAnswer{{{"slope", found->slope.value, "y per x", found->slope.standard_error},
                         {"standard_error", found->slope.standard_error, "y per x"},
                         {"intercept", found->intercept, "y"},
                         {"slope_uncorrected", found->uncorrected, "y per x"},
                         {"reliability_of_x", found->reliability, "1"}}};
}

} // namespace

std::vector<Method> methods_of_models() {
    return {
        {"impulse_response",
         "What would a model with one lasting and one passing effect of training say, and could tests tell "
         "its "
         "numbers?",
         {{"loads", "training load of each day, the first being day 0", 0, most, {}, {}, true},
          {"start", "level before any training", -most, most},
          {"lasting_gain", "of one unit of load", least, most},
          {"passing_gain", "loss of one unit of load", least, most},
          {"lasting_days", "time in which the gain falls to 37 %", least, 1000},
          {"passing_days", "time in which the loss falls to 37 %", least, 1000},
          {"on_day", "the day wanted, before its training", 0, 1e4},
          {"tests", "how many tests, spread evenly, should tell the numbers", 5, 1000, {}, ""},
          {"test_error", "typical error of one test", least, most, {}, ""}},
         {"Banister1975", "Hellard2006"},
         run_impulse_response},
        {"slope_with_error",
         "How steep is y on x when x is measured with a known error?",
         {{"x", "values with an error", -most, most, {}, {}, true},
          {"y", "what goes with them", -most, most, {}, {}, true},
          {"x_error", "standard error of one x", 0, most}},
         {"Fuller1987"},
         run_slope_with_error},
    };
}

} // namespace amentum::inference
