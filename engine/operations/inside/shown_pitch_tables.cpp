#include "operations/inside/shown_pitch_tables.h"

#include "operations/inside/arm_case.h"

#include <algorithm>
#include <cstdio>
#include <set>

namespace amentum {
namespace {

std::string age_on_words(const PitchRule& rule) {
    if (!rule.age_month || !rule.age_day)
        return "";
    char text[16];
    std::snprintf(text, sizeof text, "%02d-%02d", *rule.age_month, *rule.age_day);
    return text;
}

bool of_table(const PitchRule& rule, const ShownPitchTable& table) {
    return rule.organisation == table.organisation && word(rule.sport) == table.sport;
}

std::vector<PitchRow> rows_of(const std::vector<PitchRule>& rules, const ShownPitchTable& table) {
    std::vector<PitchRow> rows;
    for (const auto& rule : rules)
        if (of_table(rule, table))
            rows.push_back(shown_row(rule));
    return rows;
}

void add_edits(const FacilityView& view, ShownPitchTable& table) {
    for (const auto& kept : view.records.pitch_tables)
        if (kept.organisation == table.organisation && word(kept.sport) == table.sport)
            table.edits.push_back(
                {kept.number, kept.date.text(), kept.author, kept.reason, kept.rules.empty()});
    table.kept_here = !table.edits.empty() && !table.edits.back().published;
    table.whose =
        table.kept_here ? table.edits.back().author + "'s word, " + table.edits.back().date : "As published";
}

int throwers_of(const FacilityView& view, const std::vector<PitchRule>& in_force,
                const ShownPitchTable& table, Date today) {
    int throwers = 0;
    for (const auto& athlete : view.records.athletes) {
        if (word(athlete.sport) != table.sport)
            continue;
        const auto tables = tables_of_arm(in_force, view.records.teams, athlete, today);
        throwers += std::any_of(tables.begin(), tables.end(), [&](const auto& each) {
            return each.organisation == table.organisation && !each.teams.empty();
        });
    }
    return throwers;
}

} // namespace

PitchRow shown_row(const PitchRule& rule) {
    PitchRow row{rule.age_low,
                 rule.age_high,
                 rule.daily_max,
                 {},
                 rule.game_max,
                 rule.third_day_max,
                 rule.most_days_running,
                 rule.yearly_innings,
                 word(rule.second_game),
                 word(rule.last_batter),
                 rule.no_catching_from,
                 rule.no_pitching_caught,
                 rule.months_off,
                 rule.months_off_running,
                 word(rule.months_off_from),
                 rule.note};
    for (const auto& to : rule.rest_to)
        if (to)
            row.rest_to.push_back(*to);
    return row;
}

std::vector<ShownPitchTable> shown_pitch_tables(const ReferenceTables& tables, const FacilityView& view,
                                                Date today) {
    const auto in_force = pitch_rules_in_force(tables, view);
    std::vector<ShownPitchTable> shown;
    for (const auto& rule : in_force) {
        const bool seen =
            std::any_of(shown.begin(), shown.end(), [&](const auto& each) { return of_table(rule, each); });
        if (seen)
            continue;
        ShownPitchTable table{rule.organisation,
                              word(rule.sport),
                              rule.year,
                              age_on_words(rule),
                              false,
                              "",
                              {},
                              {},
                              rule.sources,
                              {},
                              0};
        table.rows = rows_of(in_force, table);
        add_edits(view, table);
        if (table.kept_here)
            table.published = rows_of(tables.pitch_rules, table);
        table.throwers = throwers_of(view, in_force, table, today);
        shown.push_back(std::move(table));
    }
    return shown;
}

Result<PitchRule> rule_from(const PitchRow& row, const std::string& organisation, Sport sport, int year,
                            const std::string& mark) {
    PitchRule rule{organisation,
                   year,
                   sport,
                   row.age_low,
                   row.age_high,
                   row.daily_max,
                   {},
                   row.game_max,
                   row.third_day_max,
                   row.most_days_running,
                   row.yearly_innings,
                   row.note.value_or(""),
                   {}};
    if (row.rest_to.size() > rule.rest_to.size())
        return refuse_range(mark + "rest_to", static_cast<double>(row.rest_to.size()), 0,
                            static_cast<double>(rule.rest_to.size()), "bands");
    std::copy(row.rest_to.begin(), row.rest_to.end(), rule.rest_to.begin());
    const auto second = from_word<SecondGame>(row.second_game.value_or("unsaid"));
    if (!second)
        return refuse_choice(mark + "second_game", *row.second_game, all_words<SecondGame>());
    const auto batter = from_word<LastBatter>(row.last_batter.value_or("unsaid"));
    if (!batter)
        return refuse_choice(mark + "last_batter", *row.last_batter, all_words<LastBatter>());
    const auto off_from = from_word<MonthsOffFrom>(row.months_off_from.value_or("pitching"));
    if (!off_from)
        return refuse_choice(mark + "months_off_from", *row.months_off_from, all_words<MonthsOffFrom>());
    rule.second_game = *second;
    rule.last_batter = *batter;
    rule.no_catching_from = row.no_catching_from;
    rule.no_pitching_caught = row.no_pitching_caught;
    rule.months_off = row.months_off;
    rule.months_off_running = row.months_off_running;
    rule.months_off_from = *off_from;
    return rule;
}

Result<std::optional<std::pair<int, int>>> age_day_given(const std::string& field,
                                                         const std::optional<std::string>& given) {
    if (!given || given->empty())
        return std::optional<std::pair<int, int>>();
    const auto day =
        parse_date("2001-" + *given, field); // a common year: 29 February is no day every year has
    if (!day || given->size() != 5)
        return Refusal{RefusalCode::impossible_date, "Age counts as of a day every year has.", field, *given,
                       "MM-DD, like 05-01; left out for the birthday"};
    const auto calendar = day->calendar();
    return std::optional(std::pair(static_cast<int>(static_cast<unsigned>(calendar.month())),
                                   static_cast<int>(static_cast<unsigned>(calendar.day()))));
}

} // namespace amentum
