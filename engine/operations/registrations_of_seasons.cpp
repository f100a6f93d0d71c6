// The operations on what a season is played by: tables of limits, teams, days spoken for.
#include "operations/change_pitch_rules.h"
#include "operations/change_time_zone.h"
#include "operations/inside/terminal_text.h"
#include "operations/join_team.h"
#include "operations/make_operation.h"
#include "operations/pitch_rules.h"
#include "operations/record_day.h"
#include "operations/registrations.h"

namespace amentum {
namespace {

using boost::json::value;

std::string maybe_said(const value& number) {
    return number.is_null() ? "-" : number_said(number, 0);
}

std::string row_words(const value& row) {
    std::string bands;
    for (const auto& to : row.at("rest_to").as_array())
        bands += (bands.empty() ? "" : " / ") + number_said(to, 0);
    return "  " +
           padded(number_said(row.at("age_low"), 0) + " to " + number_said(row.at("age_high"), 0), 10) +
           padded(number_said(row.at("daily_max"), 0), 11) + padded(bands.empty() ? "-" : bands, 28) +
           padded(maybe_said(row.at("game_max")), 6) + padded(maybe_said(row.at("third_day_max")), 11) +
           maybe_said(row.at("yearly_innings")) + "\n";
}

std::string table_words(const value& table) {
    std::string text = said(table.at("organisation")) + ", " + said(table.at("sport")) + ", " +
                       number_said(table.at("year"), 0) + ". " + said(table.at("whose")) + ".\n  " +
                       padded("ages", 10) + padded("most a day", 11) +
                       padded("rest 0 / 1 / 2 ... days to", 28) + padded("game", 6) +
                       padded("third day", 11) + "innings a year\n";
    for (const auto& row : table.at("rows").as_array())
        text += row_words(row);
    for (const auto& edit : table.at("edits").as_array())
        text += paragraph("Table " + number_said(edit.at("number"), 0) + ", " + said(edit.at("date")) + ", " +
                          said(edit.at("author")) + ": " + said(edit.at("reason")));
    return text + "\n";
}

std::string rules_words(const value& answer) {
    std::string text;
    for (const auto& table : answer.at("tables").as_array())
        text += table_words(table);
    return text + list_said(answer.at("words"), "");
}

std::string changed_words(const value& answer) {
    return table_words(answer.at("table")) + list_said(answer.at("words"), "");
}

std::string joined_words(const value& answer) {
    return list_said(answer.at("teams"), "- ") + paragraph(said(answer.at("words")));
}

std::string kept_words(const value& answer) {
    return list_said(answer.at("words"), "");
}

std::string zone_words(const value& answer) {
    return paragraph(said(answer.at("words")));
}

} // namespace

std::vector<Operation> season_operations() {
    return {
        make_operation("pitch_rules", "The tables of limits on pitching in force here, and who changed them.",
                       Effect::reads, {{"organisation", "one of them; left out: all"}}, &pitch_rules,
                       &rules_words),
        make_operation(
            "change_pitch_rules", "Play by another table of limits: whole, checked, with who and why.",
            Effect::writes,
            {{"organisation", "whose table it is"},
             {"sport", "baseball or softball"},
             {"year", "of the table"},
             {"age_on", "MM-DD: age counts as of that day of the year; left out: the birthday"},
             {"rows", "one for each band of ages: age_low, age_high, daily_max, rest_to and the rest"},
             {"published", "yes: back to the table that came with the program"},
             {"source", "where the table was read"},
             {"author", "who takes the decision"},
             {"reason", "why, at least 10 letters"}},
            &change_pitch_rules, &changed_words),
        make_operation("join_team", "For whom a thrower plays, and by whose table.", Effect::writes,
                       {{"athlete", "the thrower's name or id"},
                        {"team", "its name"},
                        {"organisation", "whose table it plays by; left out: none known here"},
                        {"date", "YYYY-MM-DD, the first day; left out: today"},
                        {"last_date", "the last day, when it ends"}},
                       &join_team, &joined_words),
        make_operation("record_day", "Keep a day that is spoken for: game, start, practice, travel, off.",
                       Effect::writes,
                       {{"kind", "game, start (as pitcher), practice, travel or off"},
                        {"date", "YYYY-MM-DD"},
                        {"last_date", "of a run of days; left out: the same"},
                        {"note", "where, against whom"},
                        {"athletes", "whom it concerns"}},
                       &record_day, &kept_words),
        make_operation(
            "change_time_zone", "The time zone whose days the facility counts by.", Effect::writes,
            {{"time_zone", "a name of the tz database, like America/Halifax; empty: the computer's own"}},
            &change_time_zone, &zone_words),
    };
}

} // namespace amentum
