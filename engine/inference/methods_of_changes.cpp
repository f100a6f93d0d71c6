#include "inference/change.h"
#include "inference/methods.h"
#include "inference/regression_to_the_mean.h"

#include <cmath>

namespace amentum::inference {
namespace {

constexpr double least = 1e-9, most = 1e6;

Result<MethodAnswer> run_change_judgement(const MethodArguments& given) {
    const double first = given.number("error_first");
    const double second = given.has("error_second") ? given.number("error_second") : first;
    const double prior_sd = given.number("prior_sd");
    MeasuredChange change{given.number("change"),
                          std::hypot(first, second),
                          given.number("smallest_worthwhile"),
                          {given.number("prior_mean"), prior_sd * prior_sd}};
    if (given.has("degrees_of_freedom"))
        change.degrees_of_freedom = given.number("degrees_of_freedom");
    const auto judged = judge_measured_change(change);
    MethodAnswer answer{
        {{"likely_change", judged.likely.value, "test unit", judged.likely.standard_error},
         {"standard_error", judged.likely.standard_error, "test unit"},
         {"low_80", judged.likely.central().low, "test unit"},
         {"high_80", judged.likely.central().high, "test unit"},
         {"chance_gained", judged.chance_gained, "1"},
         {"chance_lost", judged.chance_lost, "1"},
         {"chance_gained_without_prior", *judged.flat_chance_gained, "1"},
         {"smallest_detectable", smallest_detectable_difference(first, second), "test unit"}}};
    const bool sure = judged.verdict != ChangeVerdict::cannot_tell;
    answer.notes.push_back(sure ? "Verdict: " + word(judged.verdict) + "." : "Verdict: cannot tell.");
    return answer;
}

Result<MethodAnswer> run_smallest_worthwhile_change(const MethodArguments& given) {
    const double error = given.number("error");
    std::vector<DatedValue> values;
    for (const double value : given.list("values"))
        values.push_back({0, value, error * error});
    if (values.size() < 2)
        return Refusal{RefusalCode::too_few_data, "A spread needs the values of at least two athletes.",
                       "values", "1", "2 or more"};
    const double change = smallest_worthwhile_change(values);
    MethodAnswer answer{{{"smallest_worthwhile_change", change, "test unit"}}};
    if (change == 0)
        answer.notes.push_back(
            "The athletes differ by no more than the error of the test: set a value by hand.");
    return answer;
}

Result<MethodAnswer> run_regression_to_the_mean(const MethodArguments& given) {
    const TestedGroup group{given.number("mean"), given.number("between_sd"), given.number("error_sd")};
    MethodAnswer answer{{{"reliability", reliability_of(group), "1"}}};
    if (!given.has("first_test") && !given.has("below"))
        return refuse_missing("first_test",
                              "the first value, or below: the cut under which athletes were picked");
    if (given.has("first_test"))
        answer.outputs.push_back(
            {"expected_change", expected_return(group, given.number("first_test")), "test unit"});
    if (given.has("below"))
        answer.outputs.push_back({"expected_change_of_those_below",
                                  expected_return_of_those_below(group, given.number("below")), "test unit"});
    return answer;
}

Method change_judgement_method() {
    return {"change_judgement",
            "Is a measured change real, and worthwhile?",
            {{"change", "second value minus first", -most, most},
             {"error_first", "standard error of the first value (typical error of one test)", least, most},
             {"error_second", "of the second; the same when left out", least, most, {}, ""},
             {"smallest_worthwhile", "change that would matter", least, most},
             {"prior_mean", "usual true change over such a time", -most, most, {}, "0"},
             {"prior_sd", "its standard deviation between athletes", least, most},
             {"degrees_of_freedom", "of the typical error, for the chance without prior", 1, 1e6, {}, ""}},
            {"Hopkins2004", "Weir2005"},
            run_change_judgement};
}

} // namespace

std::vector<Method> methods_of_changes() {
    return {
        change_judgement_method(),
        {"smallest_worthwhile_change",
         "Which change would matter, judged by how much athletes differ?",
         {{"values", "one value of each athlete", -most, most, {}, {}, true},
          {"error", "standard error of one value", 0, most}},
         {"Hopkins2004"},
         run_smallest_worthwhile_change},
        {"regression_to_the_mean",
         "How far does an extreme first test move back by itself?",
         {{"mean", "of the group", -most, most},
          {"between_sd", "standard deviation of the true level between athletes", least, most},
          {"error_sd", "standard deviation of the error of one test", least, most},
          {"first_test", "the first value", -most, most, {}, ""},
          {"below", "the cut below which athletes were picked", -most, most, {}, ""}},
         {"Barnett2005"},
         run_regression_to_the_mean},
    };
}

} // namespace amentum::inference
