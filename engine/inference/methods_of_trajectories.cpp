#include "inference/methods.h"
#include "inference/roster_variances.h"
#include "inference/trajectory.h"
#include "values/shortest_decimal.h"

#include <algorithm>
#include <cmath>

namespace amentum::inference {
namespace {

constexpr double least_variance = 1e-9, most = 1e9;

MethodInput days_input() {
    return {"days", "day number of each test, rising", -1e6, 1e6, {}, {}, true};
}
MethodInput values_input() {
    return {"values", "what each test showed", -most, most, {}, {}, true};
}

Refusal refuse_lengths(const std::string& field, std::size_t given, std::size_t wanted) {
    return {RefusalCode::wrong_type,
            field + " has " + std::to_string(given) + " numbers, but there are " + std::to_string(wanted) +
                " days.",
            field, std::to_string(given), std::to_string(wanted)};
}

Result<int> whole_day(double day) {
    if (day == std::floor(day))
        return static_cast<int>(day);
    return refuse_range("days", day, -1e6, 1e6, "", "A whole number.");
}

// The tests with the given variances: one for all of them, or one for each.
Result<std::vector<DatedValue>> tests_of(const MethodArguments& given, const std::vector<double>& variances) {
    const auto& days = given.list("days");
    const auto& values = given.list("values");
    if (values.size() != days.size())
        return refuse_lengths("values", values.size(), days.size());
    if (variances.size() != 1 && variances.size() != days.size())
        return refuse_lengths("variances", variances.size(), days.size());
    std::vector<DatedValue> tests;
    for (std::size_t i = 0; i < days.size(); ++i) {
        const auto day = whole_day(days[i]);
        if (!day)
            return day.refusal();
        if (i > 0 && days[i] < days[i - 1])
            return Refusal{RefusalCode::out_of_range,
                           "days must rise, but " + format_shortest(days[i]) + " follows " +
                               format_shortest(days[i - 1]) + ".",
                           "days", format_shortest(days[i]), "not before " + format_shortest(days[i - 1])};
        tests.push_back({*day, values[i], variances[variances.size() == 1 ? 0 : i]});
    }
    return tests;
}

Result<std::optional<StateOnDay>> prior_of(const MethodArguments& given) {
    if (given.has("prior_mean") != given.has("prior_variance"))
        return refuse_missing(given.has("prior_mean") ? "prior_variance" : "prior_mean",
                              "both or neither: the level before the first test");
    if (!given.has("prior_mean"))
        return std::optional<StateOnDay>();
    return std::optional<StateOnDay>({given.number("prior_mean"), given.number("prior_variance")});
}

Result<MethodAnswer> run_trajectory(const MethodArguments& given) {
    const auto tests = tests_of(given, given.list("variances"));
    if (!tests)
        return tests.refusal();
    const auto prior = prior_of(given);
    if (!prior)
        return prior.refusal();
    const auto day = given.has("on_day") ? whole_day(given.number("on_day")) : Result<int>(tests->back().day);
    if (!day)
        return day.refusal();

    const auto trajectory = estimate_trajectory(*tests, given.number("drift_per_day"), *prior);
    const auto state = trajectory.state_on(*day);
    const double error = std::sqrt(state.variance);
    MethodAnswer answer{
        {{"level", state.mean, "test unit", error}, {"level_variance", state.variance, "test unit^2"}}};
    answer.outputs.push_back({"log_likelihood", trajectory.log_likelihood, "1"});
    for (const auto& point : trajectory.points)
        if (point.far_from_expected)
            answer.notes.push_back("The value of day " + std::to_string(point.day) +
                                   " is more than 4 standard deviations from what was expected.");
    return answer;
}

Result<MethodAnswer> run_series_variances(const MethodArguments& given) {
    const auto tests = tests_of(given, {1.0});
    if (!tests)
        return tests.refusal();
    const auto varies = [&](const DatedValue& test) { return test.value != tests->front().value; };
    if (tests->size() < 5 || std::none_of(tests->begin(), tests->end(), varies))
        return Refusal{RefusalCode::too_few_data,
                       "Two variances need at least 5 tests that are not all equal; better 50.", "values",
                       std::to_string(tests->size()), "5 or more"};
    const auto found = estimate_series_variances(*tests);
    return MethodAnswer{{{"error_variance", found.error, "test unit^2"},
                         {"drift_per_day", found.drift, "test unit^2/d"},
                         {"log_likelihood", found.log_likelihood, "1"}}};
}

Result<MethodAnswer> run_leave_one_out(const MethodArguments& given) {
    const auto tests = tests_of(given, given.list("variances"));
    if (!tests)
        return tests.refusal();
    const auto prior = prior_of(given);
    if (!prior)
        return prior.refusal();
    if (tests->size() < 2 && !*prior)
        return Refusal{RefusalCode::too_few_data, "One test alone has no others to expect it from.", "values",
                       "1", "2 or more, or a prior"};
    const double wanted = given.number("test");
    if (wanted != std::floor(wanted) || wanted > static_cast<double>(tests->size()))
        return refuse_range("test", wanted, 1, static_cast<double>(tests->size()), "", "A whole number.");
    const auto all = leave_one_out(*tests, given.number("drift_per_day"), *prior);
    const std::size_t i = static_cast<std::size_t>(wanted) - 1;
    const double spread = std::sqrt(all[i].expected.variance);
    double sum = 0;
    for (const auto& one : all)
        sum += one.log_density;
    return MethodAnswer{{{"expected", all[i].expected.mean, "test unit", spread},
                         {"standard_deviation", spread, "test unit"},
                         {"difference", (*tests)[i].value - all[i].expected.mean, "test unit", spread},
                         {"log_density", all[i].log_density, "1"},
                         {"log_density_of_all", sum, "1"}}};
}

MethodInput variances_input() {
    return {"variances", "error variance of each test, or one for all", least_variance, most, {}, {}, true};
}
MethodInput drift_input() {
    return {"drift_per_day", "variance of the walk in one day", 0, most};
}
MethodInput prior_mean_input() {
    return {"prior_mean", "level expected before the first test", -most, most, {}, ""};
}
MethodInput prior_variance_input() {
    return {"prior_variance", "its variance", least_variance, most, {}, ""};
}

} // namespace

std::vector<Method> methods_of_trajectories() {
    return {
        {"leave_one_out",
         "What do all the other tests, earlier and later ones, expect of one test?",
         {days_input(),
          values_input(),
          variances_input(),
          drift_input(),
          {"test", "which one, counted from 1", 1, 1e6},
          prior_mean_input(),
          prior_variance_input()},
         {"DurbinKoopman2012"},
         run_leave_one_out},
        {"trajectory",
         "Where is a quality on a day, from irregular tests with known errors?",
         {days_input(),
          values_input(),
          variances_input(),
          drift_input(),
          {"on_day", "the day wanted; the last test's when left out", -1e6, 1e6, {}, ""},
          prior_mean_input(),
          prior_variance_input()},
         {"DurbinKoopman2012", "RauchTungStriebel1965"},
         run_trajectory},
        {"series_variances",
         "Which error and which drift does one long series of tests show?",
         {days_input(), values_input()},
         {"DurbinKoopman2012"},
         run_series_variances},
    };
}

} // namespace amentum::inference
