// Throws to their rows and back, and the entries as they stood before a correction.
#include "store/sqlite/rows.h"
#include "store/sqlite/new_rows.h"
#include "store/sqlite/optional_quantities.h"
#include "store/sqlite/statement.h"

#include <cassert>

namespace amentum {
namespace {

constexpr const char* throw_columns =
    "athlete_id, date, setting, occasion, count, effort, speed_ms, distance_m, ball_mass_kg, "
    "soreness_before, "
    "soreness_after, soreness_next_day, note, team, game, outs, before_last_batter, outs_caught, accuracy, "
    "device";

template <class... Key>
bool save_throw_row(NewRows& row, const ThrowEntry& t, const Key&... key) {
    return row.save(key..., t.athlete.text, t.date, word(t.setting), t.occasion, t.count, t.effort,
                    speed_ms(t.speed), metres(t.distance), kilograms(t.ball_mass), t.soreness_before,
                    t.soreness_after, t.soreness_next_day, t.note, t.team, t.game, t.outs,
                    t.before_last_batter, t.outs_caught, t.accuracy, t.device);
}

// The columns above, from where the row stands.
ThrowEntry throw_in(Statement& query) {
    AthleteId id{query.text()};
    const Date date = query.date();
    const auto setting = query.choice<ThrowSetting>();
    const int occasion = query.whole();
    ThrowEntry t{id, date, setting, query.whole(), {}, {}, {}, {}, {}, {}, {}, {}, occasion};
    t.effort = query.maybe_number();
    t.speed = speed_of(query.maybe_number());
    t.distance = length_of(query.maybe_number());
    t.ball_mass = mass_of(query.maybe_number());
    t.soreness_before = query.maybe_number();
    t.soreness_after = query.maybe_number();
    t.soreness_next_day = query.maybe_number();
    t.note = query.text();
    t.team = query.text();
    t.game = query.text();
    t.outs = query.maybe_whole();
    t.before_last_batter = query.maybe_whole();
    t.outs_caught = query.maybe_whole();
    t.accuracy = query.text();
    t.device = query.text();
    return t;
}

int next_correction(SQLite::Database& database) {
    Statement query(database,
                    "SELECT coalesce(max(number), 0) + 1 FROM throw_correction WHERE facility_id = $1");
    query.bind(this_facility).step();
    query.begin_row();
    return query.whole();
}

} // namespace

int save_throws(SQLite::Database& database, const std::vector<ThrowEntry>& entries) {
    NewRows row(database, "throw_entry", std::string("facility_id, ") + throw_columns);
    int added = 0;
    for (const auto& t : entries)
        added += save_throw_row(row, t, this_facility);
    return added;
}

std::vector<ThrowEntry> load_throws(SQLite::Database& database) {
    Statement query(
        database,
        std::string("SELECT ") + throw_columns +
            " FROM throw_entry WHERE facility_id = $1 ORDER BY athlete_id, date, setting, occasion");
    query.bind(this_facility);
    std::vector<ThrowEntry> entries;
    while (query.step()) {
        query.begin_row();
        entries.push_back(throw_in(query));
    }
    return entries;
}

std::optional<ThrowEntry> load_throw(SQLite::Database& database, const ThrowEntry& of_this_identity) {
    const ThrowEntry& t = of_this_identity;
    Statement query(database,
                    std::string("SELECT ") + throw_columns +
                        " FROM throw_entry WHERE facility_id = $1 AND athlete_id = $2 AND date = $3 "
                        "AND setting = $4 AND occasion = $5");
    query.bind(this_facility, t.athlete.text, t.date, word(t.setting), t.occasion);
    if (!query.step())
        return std::nullopt;
    query.begin_row();
    return throw_in(query);
}

void remove_throw(SQLite::Database& database, const ThrowEntry& of_this_identity) {
    const ThrowEntry& t = of_this_identity;
    Statement(database,
              "DELETE FROM throw_entry WHERE facility_id = $1 AND athlete_id = $2 AND date = $3 AND "
              "setting = $4 AND occasion = $5")
        .bind(this_facility, t.athlete.text, t.date, word(t.setting), t.occasion)
        .run();
}

ThrowCorrection save_throw_correction(SQLite::Database& database, ThrowCorrection correction) {
    correction.number = next_correction(database);
    const ThrowCorrection& c = correction;
    NewRows(database, "throw_correction", "facility_id, number, recorded, recorded_by, reason")
        .save(this_facility, c.number, c.recorded, c.by, c.reason);
    NewRows row(database, "throw_entry_corrected",
                std::string("facility_id, number, stood, ") + throw_columns);
    save_throw_row(row, c.before, this_facility, c.number, "before");
    if (c.after)
        save_throw_row(row, *c.after, this_facility, c.number, "after");
    return correction;
}

std::vector<ThrowCorrection> load_throw_corrections(SQLite::Database& database) {
    Statement query(database,
                    std::string("SELECT number, recorded, recorded_by, reason, stood, ") + throw_columns +
                        " FROM throw_correction NATURAL JOIN throw_entry_corrected WHERE facility_id = $1 "
                        "ORDER BY number, stood DESC"); // before, after
    query.bind(this_facility);
    std::vector<ThrowCorrection> corrections;
    while (query.step()) {
        query.begin_row();
        const int number = query.whole();
        const Date recorded = query.date();
        std::string by = query.text(), reason = query.text();
        if (query.text() == "after") {
            assert(!corrections.empty() && corrections.back().number == number);
            corrections.back().after = throw_in(query);
        } else {
            corrections.push_back({number, throw_in(query), {}, recorded, std::move(by), std::move(reason)});
        }
    }
    return corrections;
}

} // namespace amentum
