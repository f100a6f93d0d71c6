#include "store/sqlite/rows.h"

#include "store/sqlite/new_rows.h"

namespace amentum {
namespace {

constexpr const char* trace_columns =
    "trace_id, athlete_id, date, effort, legs, trial, file_name, file_bytes, file_digest, rate_hz, "
    "body_mass_kg, box_height_m, device, reading_notes, note";

KeptTrace trace_in(Statement& query) {
    query.begin_row();
    std::string id = query.text();
    AthleteId athlete{query.text()};
    const Date date = query.date();
    std::string effort = query.text(), legs = query.text();
    const int trial = query.whole();
    std::string file_name = query.text();
    const std::int64_t file_bytes = query.big_whole();
    KeptTrace trace{std::move(id),
                    athlete,
                    date,
                    std::move(effort),
                    std::move(legs),
                    trial,
                    std::move(file_name),
                    file_bytes,
                    query.text(),
                    {},
                    {},
                    {},
                    {},
                    {}};
    trace.recording.rate_hz = query.number();
    if (const auto kg = query.maybe_number())
        trace.body_mass = Mass::kilograms(*kg);
    if (const auto m = query.maybe_number())
        trace.box_height = Length::metres(*m);
    trace.device = query.text();
    trace.recording.notes = split_lines(query.text());
    trace.note = query.text();
    return trace;
}

// Names and sides of the plates; their samples only when they are wanted.
void add_plates(SQLite::Database& database, KeptTrace& trace, bool with_samples) {
    Statement query(database,
                    std::string("SELECT name, side") + (with_samples ? ", vertical, lateral" : "") +
                        " FROM force_trace_plate WHERE facility_id = $1 AND trace_id = $2 ORDER BY place");
    query.bind(this_facility, trace.id);
    while (query.step()) {
        query.begin_row();
        PlateForces plate{query.text(), query.choice<Side>(), {}, {}};
        if (with_samples) {
            plate.vertical = query.floats();
            plate.lateral = query.floats();
        }
        trace.recording.plates.push_back(std::move(plate));
    }
}

void add_moves(SQLite::Database& database, KeptTrace& trace) {
    Statement query(database, "SELECT event, time_s, reason, moved_on FROM force_trace_move "
                              "WHERE facility_id = $1 AND trace_id = $2 ORDER BY place");
    query.bind(this_facility, trace.id);
    while (query.step()) {
        query.begin_row();
        std::string event = query.text();
        const auto seconds = query.maybe_number();
        std::string reason = query.text();
        trace.moves.push_back({std::move(event), seconds, std::move(reason), query.date()});
    }
}

} // namespace

void save_trace_rows(SQLite::Database& database, const KeptTrace& t) {
    NewRows(database, "force_trace", std::string("facility_id, ") + trace_columns)
        .save(this_facility, t.id, t.athlete.text, t.date, t.effort, t.legs, t.trial, t.file_name,
              t.file_bytes, t.file_digest, t.recording.rate_hz,
              t.body_mass ? std::optional(t.body_mass->kilograms()) : std::nullopt,
              t.box_height ? std::optional(t.box_height->metres()) : std::nullopt, t.device,
              joined_lines(t.recording.notes), t.note);
    NewRows plates(database, "force_trace_plate",
                   "facility_id, trace_id, place, name, side, vertical, lateral");
    int place = 0;
    for (const auto& plate : t.recording.plates)
        plates.save(this_facility, t.id, ++place, plate.name, word(plate.side), plate.vertical,
                    plate.lateral);
    for (std::size_t i = 0; i < t.moves.size(); ++i)
        save_move_row(database, t.id, i + 1, t.moves[i]);
}

void save_move_row(SQLite::Database& database, const std::string& trace, std::size_t place,
                   const EventMove& move) {
    NewRows(database, "force_trace_move", "facility_id, trace_id, place, event, time_s, reason, moved_on")
        .save(this_facility, trace, static_cast<int>(place), move.event, move.seconds, move.reason,
              move.moved_on);
}

std::vector<KeptTrace> load_traces(SQLite::Database& database, const std::optional<AthleteId>& athlete) {
    Statement query(database,
                    std::string("SELECT ") + trace_columns +
                        " FROM force_trace WHERE facility_id = $1 AND ($2 IS NULL OR athlete_id = $2) "
                        "ORDER BY athlete_id, date, effort, legs, trial");
    query.bind(this_facility, athlete ? std::optional(athlete->text) : std::nullopt);
    std::vector<KeptTrace> traces;
    while (query.step())
        traces.push_back(trace_in(query));
    for (auto& trace : traces) {
        add_plates(database, trace, false);
        add_moves(database, trace);
    }
    return traces;
}

std::optional<KeptTrace> load_trace(SQLite::Database& database, const std::string& id) {
    Statement query(database, std::string("SELECT ") + trace_columns +
                                  " FROM force_trace WHERE facility_id = $1 AND trace_id = $2");
    query.bind(this_facility, id);
    if (!query.step())
        return std::nullopt;
    KeptTrace trace = trace_in(query);
    add_plates(database, trace, true);
    add_moves(database, trace);
    return trace;
}

std::optional<std::string> trace_of_trial(SQLite::Database& database, const KeptTrace& t) {
    Statement query(database,
                    "SELECT trace_id FROM force_trace WHERE facility_id = $1 AND athlete_id = $2 AND "
                    "date = $3 AND effort = $4 AND legs = $5 AND trial = $6");
    query.bind(this_facility, t.athlete.text, t.date, t.effort, t.legs, t.trial);
    if (!query.step())
        return std::nullopt;
    query.begin_row();
    return query.text();
}

void remove_reading(SQLite::Database& database, const Reading& r) {
    Statement(database, "DELETE FROM reading WHERE facility_id = $1 AND athlete_id = $2 AND date = $3 AND "
                        "test = $4 AND side = $5 AND trial = $6")
        .bind(this_facility, r.athlete.text, r.date, r.test, word(r.side), r.trial)
        .run();
}

} // namespace amentum
