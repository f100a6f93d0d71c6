// Tables of limits on pitching kept here, and who plays by which.
#include "records/inside/read_line.h"

#include <algorithm>
#include <array>

namespace amentum {
namespace {

constexpr std::array<const char*, 6> rest_columns{"rest_0_to", "rest_1_to", "rest_2_to",
                                                  "rest_3_to", "rest_4_to", "rest_5_to"};
constexpr std::array<const char*, 24> columns_of_a_row{"year",
                                                       "age_high",
                                                       "daily_max",
                                                       "rest_0_to",
                                                       "rest_1_to",
                                                       "rest_2_to",
                                                       "rest_3_to",
                                                       "rest_4_to",
                                                       "rest_5_to",
                                                       "game_max",
                                                       "third_day_max",
                                                       "note",
                                                       "most_days_running",
                                                       "yearly_innings",
                                                       "source",
                                                       "age_month",
                                                       "age_day",
                                                       "second_game",
                                                       "last_batter",
                                                       "no_catching_from",
                                                       "no_pitching_caught",
                                                       "months_off",
                                                       "months_off_running",
                                                       "months_off_from"};

PitchRule read_row(LineReader& reader, const PitchTable& table) {
    PitchRule r{table.organisation,
                reader.needed_whole("year", limits::table_year),
                table.sport,
                reader.needed_whole("age_low", limits::age_band),
                reader.needed_whole("age_high", limits::age_band),
                reader.needed_whole("daily_max", limits::pitches),
                {},
                reader.whole("game_max", limits::pitches),
                reader.whole("third_day_max", limits::pitches_or_none),
                reader.whole("most_days_running", limits::days_running),
                reader.whole("yearly_innings", limits::yearly_innings),
                reader.text("note"),
                reader.sentences("source"),
                reader.whole("age_month", limits::month),
                reader.whole("age_day", limits::day_of_month),
                reader.choice<SecondGame>("second_game").value_or(SecondGame::unsaid),
                reader.choice<LastBatter>("last_batter").value_or(LastBatter::unsaid),
                reader.whole("no_catching_from", limits::pitches),
                reader.whole("no_pitching_caught", limits::innings_caught),
                reader.whole("months_off", limits::months_off),
                reader.whole("months_off_running", limits::months_off),
                reader.choice<MonthsOffFrom>("months_off_from").value_or(MonthsOffFrom::pitching)};
    for (std::size_t days = 0; days < rest_columns.size(); ++days)
        r.rest_to[days] = reader.whole(rest_columns[days], limits::pitches_or_none);
    return r;
}

// A line without ages is a table without rows: nothing else of a row may stand there.
std::optional<PitchRule> read_row_if_any(LineReader& reader, const PitchTable& table) {
    if (!reader.tidy("age_low").empty())
        return read_row(reader, table);
    for (const char* column : columns_of_a_row)
        if (!reader.tidy(column).empty())
            reader.needed("age_low");
    return std::nullopt;
}

// A table that is held has all of its rows.
void check_held_table(LineReader& reader, const LinesBefore& before, const RowOfPitchTable& row) {
    const auto& tables = before.context.held.pitch_tables;
    const auto held = std::find_if(tables.begin(), tables.end(),
                                   [&](const auto& each) { return each.number == row.table.number; });
    if (held == tables.end())
        return;
    const bool there = row.rule ? std::any_of(held->rules.begin(), held->rules.end(),
                                              [&](const auto& r) { return r.age_low == row.rule->age_low; })
                                : held->rules.empty();
    if (!there)
        reader.refuse(
            {RefusalCode::already_held,
             "Table " + std::to_string(row.table.number) + " is held with other rows, and is never changed.",
             "age_low", reader.tidy("age_low"), "a table of the next number"});
}

std::string read_organisation(LineReader& reader, const LinesBefore& before) {
    std::string given = reader.one_line("organisation");
    std::vector<std::string> known;
    for (const auto& rule : before.context.tables.pitch_rules)
        known.push_back(rule.organisation);
    for (const auto& table : before.context.held.pitch_tables)
        known.push_back(table.organisation);
    known.erase(std::unique(known.begin(), known.end()), known.end());
    if (!given.empty() && std::find(known.begin(), known.end(), given) == known.end())
        reader.refuse(refuse_unknown("organisation", given, known));
    return given;
}

} // namespace

RecordOnLine read_pitch_rule(LineReader& reader, LinesBefore& before) {
    const int number = read_running_number(reader, before, "", "table");
    RowOfPitchTable row{{number,
                         {},
                         reader.needed("organisation"),
                         reader.needed_choice<Sport>("sport"),
                         reader.needed("author"),
                         read_day_recorded(reader, before, "date"),
                         read_reason(reader)},
                        {}};
    reader.one_line("organisation");
    row.rule = read_row_if_any(reader, row.table);
    if (reader.refusal())
        return row;
    const PitchTable& t = row.table;
    check_head(reader, before,
               {std::to_string(number),
                "table " + std::to_string(number),
                {t.organisation, word(t.sport), t.author, t.date.text(), t.reason},
                row.rule.has_value()});
    check_held_table(reader, before, row);
    return row;
}

RecordOnLine read_team(LineReader& reader, LinesBefore& before) {
    const AthleteId athlete = read_athlete_name(reader, before);
    TeamPlace place{athlete, reader.one_line("team"), read_organisation(reader, before),
                    reader.needed_date("date"), reader.date("last_date")};
    if (place.team.empty())
        reader.needed("team");
    if (!reader.refusal() && place.last_date && *place.last_date < place.date)
        reader.refuse(
            {RefusalCode::impossible_date,
             "The last day, " + place.last_date->text() + ", is before the first, " + place.date.text() + ".",
             "last_date", place.last_date->text(), place.date.text() + " or later"});
    return place;
}

} // namespace amentum
