// Pain, clearances, steps back to throwing and answered stops to their rows and back. The tables are only added to
// (schema/0006_arm_care.sql guards them).
#include "store/sqlite/new_rows.h"
#include "store/sqlite/optional_quantities.h"
#include "store/sqlite/rows.h"
#include "store/sqlite/statement.h"

namespace amentum {
namespace {

// The steps of a kept set are all there are: none can come later.
void save_steps(SQLite::Database& database, const ThrowSteps& s, bool is_new) {
    NewRows row(database, "throw_step",
                "facility_id, athlete_id, number, step, throws, distance_m, effort, words");
    int place = 0, added = 0;
    for (const auto& step : s.steps)
        added += row.save(this_facility, s.athlete.text, s.number, ++place, step.throws,
                          metres(step.distance), step.effort, step.words);
    Statement query(database,
                    "SELECT count(*) FROM throw_step WHERE facility_id = $1 AND athlete_id = $2 AND "
                    "number = $3");
    query.bind(this_facility, s.athlete.text, s.number).step();
    query.begin_row();
    if ((added > 0 && !is_new) || query.whole() != place)
        throw StoreFailure("a row of throw_steps is held with other steps");
}

std::vector<ThrowStep> steps_of(SQLite::Database& database, const ThrowSteps& s) {
    Statement query(database,
                    "SELECT throws, distance_m, effort, words FROM throw_step WHERE facility_id = $1 "
                    "AND athlete_id = $2 AND number = $3 ORDER BY step");
    query.bind(this_facility, s.athlete.text, s.number);
    std::vector<ThrowStep> steps;
    while (query.step()) {
        query.begin_row();
        const int throws = query.whole();
        const auto distance = length_of(query.maybe_number());
        const auto effort = query.maybe_number();
        steps.push_back({throws, distance, effort, query.text()});
    }
    return steps;
}

} // namespace

void save_pains(SQLite::Database& database, const std::vector<PainEntry>& pains) {
    NewRows row(database, "pain_entry",
                "facility_id, athlete_id, number, date, region, sign, words, noted_by");
    for (const auto& p : pains)
        row.save(this_facility, p.athlete.text, p.number, p.date, word(p.region), p.sign, p.words,
                 p.noted_by);
}

std::vector<PainEntry> load_pains(SQLite::Database& database) {
    Statement query(database,
                    "SELECT athlete_id, number, date, region, sign, words, noted_by FROM pain_entry "
                    "WHERE facility_id = $1 ORDER BY athlete_id, number");
    query.bind(this_facility);
    std::vector<PainEntry> pains;
    while (query.step()) {
        query.begin_row();
        AthleteId id{query.text()};
        const int number = query.whole();
        const Date date = query.date();
        const auto region = query.choice<PainRegion>();
        std::string sign = query.text(), words = query.text();
        pains.push_back({id, number, date, region, std::move(sign), std::move(words), query.text()});
    }
    return pains;
}

void save_clearances(SQLite::Database& database, const std::vector<PainClearance>& clearances) {
    NewRows row(database, "pain_clearance",
                "facility_id, athlete_id, number, date, cleared_by, recorded_by, recorded, words");
    for (const auto& c : clearances)
        row.save(this_facility, c.athlete.text, c.number, c.date, c.cleared_by, c.recorded_by, c.recorded,
                 c.words);
}

std::vector<PainClearance> load_clearances(SQLite::Database& database) {
    Statement query(database,
                    "SELECT athlete_id, number, date, cleared_by, recorded_by, recorded, words FROM "
                    "pain_clearance WHERE facility_id = $1 ORDER BY athlete_id, number");
    query.bind(this_facility);
    std::vector<PainClearance> clearances;
    while (query.step()) {
        query.begin_row();
        AthleteId id{query.text()};
        const int number = query.whole();
        const Date date = query.date();
        std::string cleared_by = query.text(), recorded_by = query.text();
        const Date recorded = query.date();
        clearances.push_back(
            {id, number, date, std::move(cleared_by), std::move(recorded_by), recorded, query.text()});
    }
    return clearances;
}

void save_throw_steps(SQLite::Database& database, const std::vector<ThrowSteps>& all) {
    NewRows row(database, "throw_steps",
                "facility_id, athlete_id, number, origin, author, start, days_between, note, recorded_by, "
                "recorded");
    for (const auto& s : all)
        save_steps(database, s,
                   row.save(this_facility, s.athlete.text, s.number, word(s.origin), s.author, s.start,
                            s.days_between, s.note, s.recorded_by, s.recorded));
}

std::vector<ThrowSteps> load_throw_steps(SQLite::Database& database) {
    Statement query(database,
                    "SELECT athlete_id, number, origin, author, start, days_between, note, recorded_by, "
                    "recorded FROM throw_steps WHERE facility_id = $1 ORDER BY athlete_id, number");
    query.bind(this_facility);
    std::vector<ThrowSteps> all;
    while (query.step()) {
        query.begin_row();
        AthleteId id{query.text()};
        const int number = query.whole();
        const auto origin = query.choice<StepsOrigin>();
        std::string author = query.text();
        const Date start = query.date();
        const int days_between = query.whole();
        std::string note = query.text(), recorded_by = query.text();
        all.push_back({id,
                       number,
                       origin,
                       std::move(author),
                       start,
                       days_between,
                       {},
                       std::move(note),
                       std::move(recorded_by),
                       query.date()});
    }
    for (auto& each : all)
        each.steps = steps_of(database, each);
    return all;
}

void save_stops_answered(SQLite::Database& database, const std::vector<StopAnswered>& stops) {
    NewRows row(database, "stop_answered", "facility_id, athlete_id, code, date, reason, coach, recorded");
    for (const auto& s : stops)
        row.save(this_facility, s.athlete.text, s.code, s.date, s.reason, s.coach, s.recorded);
}

std::vector<StopAnswered> load_stops_answered(SQLite::Database& database) {
    Statement query(database,
                    "SELECT athlete_id, code, date, reason, coach, recorded FROM stop_answered WHERE "
                    "facility_id = $1 ORDER BY athlete_id, code, date");
    query.bind(this_facility);
    std::vector<StopAnswered> stops;
    while (query.step()) {
        query.begin_row();
        AthleteId id{query.text()};
        std::string code = query.text();
        const Date date = query.date();
        std::string reason = query.text(), coach = query.text();
        stops.push_back({id, std::move(code), date, std::move(reason), std::move(coach), query.date()});
    }
    return stops;
}

} // namespace amentum
