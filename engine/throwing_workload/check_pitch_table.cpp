#include "throwing_workload/check_pitch_table.h"

#include <algorithm>
#include <chrono>

namespace amentum {
namespace {

std::string ages(const PitchRule& rule) {
    return std::to_string(rule.age_low) + " to " + std::to_string(rule.age_high) + " years";
}

std::string given(const std::optional<int>& value) {
    return value ? std::to_string(*value) : "";
}

Refusal fault(const PitchRule& rule, const std::string& column, const std::string& stands,
              const std::string& why, const std::string& allowed) {
    const std::string field = ages(rule) + ", " + column;
    return {RefusalCode::out_of_range,
            field + (stands.empty() ? " is empty: " : " is " + stands + ": ") + why, field, stands, allowed};
}

// Looks at the cells of one row in turn and keeps the first fault.
class RowCheck {
public:
    explicit RowCheck(const PitchRule& rule) : rule_(rule) {}

    void in_range(const std::string& column, const std::optional<int>& value, int low, int high,
                  const std::string& why = "") {
        if (!found && value && (*value < low || *value > high))
            found = refuse_range(ages(rule_) + ", " + column, *value, low, high, "", why);
    }
    void demand(bool holds, const std::string& column, const std::string& stands, const std::string& why,
                const std::string& allowed) {
        if (!found && !holds)
            found = fault(rule_, column, stands, why, allowed);
    }

    std::optional<Refusal> found;

private:
    const PitchRule& rule_;
};

void check_bands(const PitchRule& rule, RowCheck& row) {
    int last = 0;
    std::optional<std::size_t> empty;
    for (std::size_t k = 0; k < rule.rest_to.size(); ++k) {
        const auto& to = rule.rest_to[k];
        const std::string column = "rest_" + std::to_string(k) + "_to";
        if (!to) {
            empty = empty.value_or(k);
            continue;
        }
        row.demand(!empty, "rest_" + std::to_string(empty.value_or(0)) + "_to", "",
                   "a band after it, " + column + ", is given.", "no empty band before a given one");
        row.demand(*to > last, column, std::to_string(*to), "bands must rise.",
                   "above " + std::to_string(last));
        row.demand(*to <= rule.daily_max, column, std::to_string(*to),
                   "a band cannot go above the daily maximum.", "at most " + std::to_string(rule.daily_max));
        last = *to;
    }
    const std::size_t bands = empty.value_or(rule.rest_to.size());
    row.demand(bands == 0 || last == rule.daily_max, "rest_" + std::to_string(bands ? bands - 1 : 0) + "_to",
               std::to_string(last), "the last band must end at the daily maximum.",
               std::to_string(rule.daily_max));
}

void check_age_day(const PitchRule& rule, const PitchRule& first, RowCheck& row) {
    row.in_range("age_month", rule.age_month, 1, 12);
    row.demand(rule.age_month || !rule.age_day, "age_month", "", "age_day is given.", "both or neither");
    row.demand(rule.age_day || !rule.age_month, "age_day", "", "age_month is given.", "both or neither");
    if (row.found)
        return;
    if (rule.age_month) {
        const auto day = std::chrono::year(2001) / *rule.age_month / *rule.age_day; // a common year
        row.demand(day.ok(), "age_day", given(rule.age_day), "not every year has this day.",
                   "a day every year has");
    }
    row.demand(rule.age_month == first.age_month && rule.age_day == first.age_day, "age_day",
               given(rule.age_day), "another row of this table reckons the age by another day.",
               "one day for all rows");
}

std::optional<Refusal> check_row(const PitchRule& rule, const PitchRule& first) {
    RowCheck row(rule);
    row.in_range("age_low", rule.age_low, 0, 99);
    row.in_range("age_high", rule.age_high, rule.age_low, 99);
    row.in_range("daily_max", rule.daily_max, 1, 400);
    check_bands(rule, row);
    row.in_range("game_max", rule.game_max, 1, rule.daily_max, "A game is part of a day.");
    row.in_range("third_day_max", rule.third_day_max, 0, rule.daily_max, "0 means none.");
    row.in_range("most_days_running", rule.most_days_running, 1, 7);
    row.in_range("yearly_innings", rule.yearly_innings, 1, 400);
    row.in_range("no_catching_from", rule.no_catching_from, 1, 400);
    row.in_range("no_pitching_caught", rule.no_pitching_caught, 1, 20);
    row.in_range("months_off", rule.months_off, 0, 12);
    row.in_range("months_off_running", rule.months_off_running, 0, rule.months_off.value_or(12),
                 "Those in one piece are part of months_off.");
    check_age_day(rule, first, row);
    return row.found;
}

std::optional<Refusal> check_same_table(const PitchRule& rule, const PitchRule& first) {
    RowCheck row(rule);
    row.demand(!rule.organisation.empty(), "organisation", "", "a table is somebody's.", "a name");
    row.demand(rule.organisation == first.organisation, "organisation", rule.organisation,
               "a table is of one organisation.", first.organisation);
    row.in_range("year", rule.year, 1990, 2200);
    row.demand(rule.year == first.year, "year", std::to_string(rule.year), "a table is of one year.",
               std::to_string(first.year));
    row.demand(rule.sport == first.sport, "sport", word(rule.sport), "a table is of one sport.",
               word(first.sport));
    return row.found;
}

std::optional<Refusal> check_ages(std::span<const PitchRule> rows) {
    std::vector<const PitchRule*> by_age;
    for (const auto& rule : rows)
        by_age.push_back(&rule);
    std::stable_sort(by_age.begin(), by_age.end(),
                     [](const PitchRule* a, const PitchRule* b) { return a->age_low < b->age_low; });
    for (std::size_t i = 1; i < by_age.size(); ++i) {
        const PitchRule &before = *by_age[i - 1], &rule = *by_age[i];
        const std::string next = std::to_string(before.age_high + 1);
        if (rule.age_low <= before.age_high)
            return fault(rule, "age_low", std::to_string(rule.age_low),
                         "these ages are already covered by the row of " + ages(before) + ".", next);
        if (rule.age_low > before.age_high + 1)
            return fault(rule, "age_low", std::to_string(rule.age_low),
                         "no row covers the ages after " + ages(before) + ".", next);
    }
    return std::nullopt;
}

} // namespace

Result<Done> check_pitch_table(std::span<const PitchRule> rows) {
    if (rows.empty())
        return refuse_missing("rules", "at least one row of limits");
    for (const auto& rule : rows) {
        if (auto refusal = check_same_table(rule, rows.front()))
            return *refusal;
        if (auto refusal = check_row(rule, rows.front()))
            return *refusal;
    }
    if (auto refusal = check_ages(rows))
        return *refusal;
    return Done{};
}

} // namespace amentum
