// Places in teams, and the tables of limits kept here, to their rows and back.
#include "store/sqlite/new_rows.h"
#include "store/sqlite/rows.h"
#include "store/sqlite/statement.h"

namespace amentum {
namespace {

constexpr const char* rule_columns =
    "year, age_low, age_high, daily_max, rest_0_to, rest_1_to, rest_2_to, rest_3_to, rest_4_to, rest_5_to, "
    "game_max, third_day_max, most_days_running, yearly_innings, note, sources, age_month, age_day, "
    "second_game, last_batter, no_catching_from, no_pitching_caught, months_off, months_off_running, "
    "months_off_from";

// The rows of a kept table are all there are: none can come later.
void save_rules(SQLite::Database& database, const PitchTable& table, bool is_new) {
    NewRows row(database, "pitch_table_rule", std::string("facility_id, number, ") + rule_columns);
    int added = 0;
    for (const auto& r : table.rules)
        added +=
            row.save(this_facility, table.number, r.year, r.age_low, r.age_high, r.daily_max, r.rest_to[0],
                     r.rest_to[1], r.rest_to[2], r.rest_to[3], r.rest_to[4], r.rest_to[5], r.game_max,
                     r.third_day_max, r.most_days_running, r.yearly_innings, r.note, joined_lines(r.sources),
                     r.age_month, r.age_day, word(r.second_game), word(r.last_batter), r.no_catching_from,
                     r.no_pitching_caught, r.months_off, r.months_off_running, word(r.months_off_from));
    Statement query(database, "SELECT count(*) FROM pitch_table_rule WHERE facility_id = $1 AND number = $2");
    query.bind(this_facility, table.number).step();
    query.begin_row();
    if ((added > 0 && !is_new) || query.whole() != static_cast<int>(table.rules.size()))
        throw StoreFailure("a row of pitch_table is held with other rules");
}

PitchRule rule_in(Statement& query, const PitchTable& table) {
    query.begin_row();
    const int year = query.whole(), low = query.whole(), high = query.whole(), daily = query.whole();
    PitchRule r{table.organisation, year, table.sport, low, high, daily, {}, {}, {}, {}, {}, {}, {}};
    for (auto& count : r.rest_to)
        count = query.maybe_whole();
    r.game_max = query.maybe_whole();
    r.third_day_max = query.maybe_whole();
    r.most_days_running = query.maybe_whole();
    r.yearly_innings = query.maybe_whole();
    r.note = query.text();
    r.sources = split_lines(query.text());
    r.age_month = query.maybe_whole();
    r.age_day = query.maybe_whole();
    r.second_game = query.choice<SecondGame>();
    r.last_batter = query.choice<LastBatter>();
    r.no_catching_from = query.maybe_whole();
    r.no_pitching_caught = query.maybe_whole();
    r.months_off = query.maybe_whole();
    r.months_off_running = query.maybe_whole();
    r.months_off_from = query.choice<MonthsOffFrom>();
    return r;
}

std::vector<PitchRule> rules_of(SQLite::Database& database, const PitchTable& table) {
    Statement query(database,
                    std::string("SELECT ") + rule_columns +
                        " FROM pitch_table_rule WHERE facility_id = $1 AND number = $2 ORDER BY age_low");
    query.bind(this_facility, table.number);
    std::vector<PitchRule> rules;
    while (query.step())
        rules.push_back(rule_in(query, table));
    return rules;
}

// Gives a place that goes on its last day. A place that ended stays as it is.
void end_place(SQLite::Database& database, const TeamPlace& p) {
    Statement(database, "UPDATE team_place SET last_date = $5 WHERE facility_id = $1 AND athlete_id = $2 AND "
                        "team = $3 AND date = $4 AND last_date IS NULL AND organisation = $6")
        .bind(this_facility, p.athlete.text, p.team, p.date, p.last_date, p.organisation)
        .run();
}

} // namespace

void save_teams(SQLite::Database& database, const std::vector<TeamPlace>& places) {
    NewRows row(database, "team_place", "facility_id, athlete_id, team, date, organisation, last_date");
    for (const auto& p : places) {
        if (p.last_date)
            end_place(database, p);
        row.save(this_facility, p.athlete.text, p.team, p.date, p.organisation, p.last_date);
    }
}

std::vector<TeamPlace> load_teams(SQLite::Database& database) {
    Statement query(database, "SELECT athlete_id, team, organisation, date, last_date FROM team_place WHERE "
                              "facility_id = $1 ORDER BY athlete_id, team, date");
    query.bind(this_facility);
    std::vector<TeamPlace> places;
    while (query.step()) {
        query.begin_row();
        AthleteId id{query.text()};
        std::string team = query.text(), organisation = query.text();
        const Date date = query.date();
        places.push_back({id, std::move(team), std::move(organisation), date, query.maybe_date()});
    }
    return places;
}

void save_pitch_tables(SQLite::Database& database, const std::vector<PitchTable>& tables) {
    NewRows row(database, "pitch_table", "facility_id, number, organisation, sport, author, date, reason");
    for (const auto& t : tables)
        save_rules(
            database, t,
            row.save(this_facility, t.number, t.organisation, word(t.sport), t.author, t.date, t.reason));
}

std::vector<PitchTable> load_pitch_tables(SQLite::Database& database) {
    Statement query(database,
                    "SELECT number, organisation, sport, author, date, reason FROM pitch_table WHERE "
                    "facility_id = $1 ORDER BY number");
    query.bind(this_facility);
    std::vector<PitchTable> tables;
    while (query.step()) {
        query.begin_row();
        const int number = query.whole();
        std::string organisation = query.text();
        const auto sport = query.choice<Sport>();
        std::string author = query.text();
        const Date date = query.date();
        tables.push_back({number, {}, std::move(organisation), sport, std::move(author), date, query.text()});
    }
    for (auto& each : tables)
        each.rules = rules_of(database, each);
    return tables;
}

} // namespace amentum
