#include "throwing_workload/methods.h"

#include "throwing_workload/pitch_rule.h"
#include "throwing_workload/workload_averages.h"

#include <cmath>

namespace amentum::throwing_workload {
namespace {

const MethodInput daily{"throws", "throws of each day, oldest first, 0 for a day without", 0, 400, {}, {},
                        true};

Result<PitchRule> rule_with(const std::vector<double>& rest_to) {
    PitchRule rule{
        "rule given", 0, Sport::baseball, 0, 99, static_cast<int>(rest_to.back()), {}, {}, {}, {}, {},
        "",           {}};
    const std::string as_given = std::to_string(rest_to.size()) + " numbers";
    if (rest_to.size() > rule.rest_to.size())
        return Refusal{RefusalCode::out_of_range, "rest_to has more than six bands.", "rest_to", as_given,
                       "1 to 6 numbers"};
    for (std::size_t i = 0; i < rest_to.size(); ++i) {
        if (std::floor(rest_to[i]) != rest_to[i] || (i > 0 && rest_to[i] <= rest_to[i - 1]))
            return Refusal{RefusalCode::out_of_range, "rest_to must be whole numbers that rise.", "rest_to",
                           as_given, "whole, rising"};
        rule.rest_to[i] = static_cast<int>(rest_to[i]);
    }
    return rule;
}

Result<MethodAnswer> run_rest_days(const MethodArguments& given) {
    const double pitches = given.number("pitches");
    if (std::floor(pitches) != pitches)
        return refuse_range("pitches", pitches, 1, 400, "", "Pitches are whole.");
    const auto rule = rule_with(given.list("rest_to"));
    if (!rule)
        return rule.refusal();
    const auto days = rest_days(*rule, static_cast<int>(pitches));
    if (!days)
        return days.refusal();
    MethodAnswer answer{{{"rest_days", static_cast<double>(*days), "d"}}};
    if (pitches > rule->daily_max)
        answer.notes.push_back(
            "The count is above the last band: the daily maximum is broken, and the days are the least.");
    return answer;
}

Result<MethodAnswer> run_ewma(const MethodArguments& given) {
    const double days = given.number("days");
    if (std::floor(days) != days)
        return refuse_range("days", days, 2, 100, "d", "Days are whole.");
    const auto averages = ewma(given.list("throws"), static_cast<int>(days));
    MethodAnswer answer{{{"ewma", averages.back(), "1/d"},
                         {"weight_of_newest_day", ewma_weight(static_cast<int>(days)), "1"},
                         {"half_life", ewma_half_life(static_cast<int>(days)), "d"}}};
    if (averages.size() < 28)
        answer.notes.push_back("Fewer than 28 days: the average still leans on its first day.");
    return answer;
}

Result<MethodAnswer> ratio_answer(const std::string& name, const Result<double>& ratio) {
    if (!ratio)
        return ratio.refusal();
    return MethodAnswer{{{name, *ratio, "1"}}, {"A description of counts. It does not predict injury."}};
}

Result<MethodAnswer> run_coupled(const MethodArguments& given) {
    return ratio_answer("coupled_ratio", coupled_ratio(given.list("throws")));
}

Result<MethodAnswer> run_uncoupled(const MethodArguments& given) {
    return ratio_answer("uncoupled_ratio", uncoupled_ratio(given.list("throws")));
}

Result<MethodAnswer> run_coupled_from_uncoupled(const MethodArguments& given) {
    return ratio_answer("coupled_ratio", coupled_from_uncoupled(given.number("uncoupled_ratio")));
}

} // namespace

std::vector<Method> methods() {
    const MethodInput rest_to{"rest_to", "highest count for 0, 1, 2 ... days of rest", 1, 400, {}, {}, true};
    const MethodInput uncoupled{"uncoupled_ratio", "mean of 7 days over the mean of the 21 before", 0, 1000};
    return {
        {"rest_days",
         "How many days of rest does a pitch-count rule ask for after this many pitches?",
         {rest_to, {"pitches", "pitches to batters on one day", 1, 400}},
         {"UsaBaseballPitching"},
         run_rest_days},
        {"ewma",
         "What is the exponentially weighted average of daily throws?",
         {daily, {"days", "N of the average", 2, 100}},
         {"Williams2017"},
         run_ewma},
        {"coupled_ratio",
         "What is the mean of the last 7 days over the mean of the last 28?",
         {daily},
         {"Lolli2019", "Impellizzeri2020"},
         run_coupled},
        {"uncoupled_ratio",
         "What is the mean of the last 7 days over the mean of the 21 days before?",
         {daily},
         {"Lolli2019", "Impellizzeri2020"},
         run_uncoupled},
        {"coupled_from_uncoupled",
         "Which coupled ratio is the same throwing as this uncoupled one?",
         {uncoupled},
         {"Lolli2019"},
         run_coupled_from_uncoupled},
    };
}

} // namespace amentum::throwing_workload
