#include "throwing_workload/methods.h"

#include "throwing_workload/pitch_allowance.h"
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

Result<std::optional<int>> whole_of(const MethodArguments& given, const std::string& name, int low,
                                    int high) {
    if (!given.has(name))
        return std::optional<int>();
    const double value = given.number(name);
    if (std::floor(value) != value)
        return refuse_range(name, value, low, high, "", "It is a whole number.");
    return std::optional(static_cast<int>(value));
}

// The last of the counts is the day asked about; the dates stand for nothing but their order.
Result<std::vector<PitchingDay>> days_with(const std::vector<double>& pitches, Date asked) {
    std::vector<PitchingDay> days;
    Date date = asked - static_cast<int>(pitches.size() - 1);
    for (const double count : pitches) {
        if (std::floor(count) != count)
            return refuse_range("pitches", count, 0, 400, "", "Pitches are whole.");
        const int whole = static_cast<int>(count);
        if (whole > 0)
            days.push_back({date, {{"", whole, {}}}, whole, 0, 0});
        date = date + 1;
    }
    return days;
}

Result<MethodAnswer> run_pitch_allowance(const MethodArguments& given) {
    const Date asked = Date::from(std::chrono::year(2026) / 6 / 1);
    auto rule = rule_with(given.list("rest_to"));
    if (!rule)
        return rule.refusal();
    const auto days = days_with(given.list("pitches"), asked);
    if (!days)
        return days.refusal();
    const auto third_day = whole_of(given, "third_day_max", 0, 400);
    if (!third_day)
        return third_day.refusal();
    const auto running = whole_of(given, "most_days_running", 1, 7);
    if (!running)
        return running.refusal();
    rule->third_day_max = *third_day;
    rule->most_days_running = *running;
    rule->second_game = *from_word<SecondGame>(given.word("second_game"));
    const PitchTableOfArm table{std::span(&*rule, 1), asked - 4000};
    const auto next = next_day_to_pitch(table, *days, asked);
    MethodAnswer answer{{{"most", static_cast<double>(measure_allowance(table, *days, asked)->most), "1"},
                         {"days_to_next", static_cast<double>(*next - asked), "d"}}};
    answer.notes.push_back("What this rule leaves, of the pitches told. It says nothing of the arm.");
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
        {"pitch_allowance",
         "How many pitches does a pitch-count rule leave on the last of these days, and in how many days the "
         "next?",
         {rest_to,
          {"pitches",
           "pitches in games of each day, oldest first, the last the day asked about",
           0,
           400,
           {},
           {},
           true},
          {"most_days_running", "days running with pitches that are allowed", 1, 7, {}, ""},
          {"third_day_max", "pitches on a third day running", 0, 400, {}, ""},
          {"second_game", "a second game on one day", 0, 0, all_words<SecondGame>(), "unsaid"}},
         {"UsaBaseballPitching", "AossmSoftball"},
         run_pitch_allowance},
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
