#include "store/sqlite/rows.h"

#include "store/sqlite/new_rows.h"
#include "store/sqlite/optional_quantities.h"

namespace amentum {
namespace {

template <class Q, class Read>
auto number_of(const std::optional<Q>& quantity, Read read) {
    return quantity ? std::optional<double>(read(*quantity)) : std::nullopt;
}
template <class Q, class Make>
std::optional<Q> quantity_of(std::optional<double> number, Make make) {
    return number ? std::optional<Q>(make(*number)) : std::nullopt;
}
std::optional<double> degrees(const std::optional<Angle>& a) {
    return number_of(a, [](Angle x) { return x.degrees(); });
}

} // namespace

void save_readings(SQLite::Database& database, const std::vector<Reading>& readings) {
    NewRows row(
        database, "reading",
        "facility_id, athlete_id, date, test, side, trial, load_kg, reps, reps_in_reserve, "
        "body_mass_kg, speed_ms, radar_angle_deg, distance_m, release_height_m, release_angle_deg, "
        "flight_time_s, height_m, angle_deg, force_n, device, rater, place, note, contact_time_s, power_w");
    for (const auto& r : readings)
        row.save(this_facility, r.athlete.text, r.date, r.test, word(r.side), r.trial, kilograms(r.load),
                 r.reps, r.reps_in_reserve, kilograms(r.body_mass), speed_ms(r.speed), degrees(r.radar_angle),
                 metres(r.distance), metres(r.release_height), degrees(r.release_angle),
                 number_of(r.flight_time, [](Duration x) { return x.seconds(); }), metres(r.height),
                 degrees(r.angle), number_of(r.force, [](Force x) { return x.newtons(); }), r.device, r.rater,
                 word(r.place), r.note, number_of(r.contact_time, [](Duration x) { return x.seconds(); }),
                 number_of(r.power, [](Power x) { return x.watts(); }));
}

namespace {

constexpr const char* reading_columns =
    "athlete_id, date, test, side, trial, load_kg, reps, reps_in_reserve, body_mass_kg, speed_ms, "
    "radar_angle_deg, distance_m, release_height_m, release_angle_deg, flight_time_s, height_m, angle_deg, "
    "force_n, device, rater, place, note, contact_time_s, power_w";

Reading reading_in(Statement& query) {
    query.begin_row();
    AthleteId id{query.text()};
    Reading r{id, query.date(), {}};
    r.test = query.text();
    r.side = query.choice<Side>();
    r.trial = query.whole();
    r.load = mass_of(query.maybe_number());
    r.reps = query.maybe_whole();
    r.reps_in_reserve = query.maybe_number();
    r.body_mass = mass_of(query.maybe_number());
    r.speed = speed_of(query.maybe_number());
    r.radar_angle = quantity_of<Angle>(query.maybe_number(), [](double x) { return Angle::degrees(x); });
    r.distance = length_of(query.maybe_number());
    r.release_height = length_of(query.maybe_number());
    r.release_angle = quantity_of<Angle>(query.maybe_number(), [](double x) { return Angle::degrees(x); });
    r.flight_time =
        quantity_of<Duration>(query.maybe_number(), [](double x) { return Duration::seconds(x); });
    r.height = length_of(query.maybe_number());
    r.angle = quantity_of<Angle>(query.maybe_number(), [](double x) { return Angle::degrees(x); });
    r.force = quantity_of<Force>(query.maybe_number(), [](double x) { return Force::newtons(x); });
    r.device = query.text();
    r.rater = query.text();
    r.place = query.choice<PlaceMeasured>();
    r.note = query.text();
    r.contact_time =
        quantity_of<Duration>(query.maybe_number(), [](double x) { return Duration::seconds(x); });
    r.power = quantity_of<Power>(query.maybe_number(), [](double x) { return Power::watts(x); });
    return r;
}

} // namespace

std::vector<Reading> load_readings(SQLite::Database& database) {
    Statement query(database,
                    std::string("SELECT ") + reading_columns +
                        " FROM reading WHERE facility_id = $1 ORDER BY athlete_id, date, test, side, trial");
    query.bind(this_facility);
    std::vector<Reading> readings;
    while (query.step())
        readings.push_back(reading_in(query));
    return readings;
}

bool held_otherwise(SQLite::Database& database, const Reading& reading) {
    Statement query(database,
                    std::string("SELECT ") + reading_columns +
                        " FROM reading WHERE facility_id = $1 AND athlete_id = $2 AND date = $3 AND "
                        "test = $4 AND side = $5 AND trial = $6");
    query.bind(this_facility, reading.athlete.text, reading.date, reading.test, word(reading.side),
               reading.trial);
    return query.step() && !(reading_in(query) == reading);
}

int save_sets(SQLite::Database& database, const std::vector<SetDone>& sets) {
    NewRows row(database, "set_done",
                "facility_id, set_key, athlete_id, date, exercise, set_number, load_kg, reps, "
                "reps_in_reserve, speed_ms, block_id, note");
    int added = 0;
    for (const auto& s : sets) {
        const auto block = s.block ? std::optional(s.block->text) : std::nullopt;
        added += row.save(this_facility, s.key, s.athlete.text, s.date, s.exercise, s.set_number,
                          kilograms(s.load), s.reps, s.reps_in_reserve, speed_ms(s.speed), block, s.note);
    }
    return added;
}

std::vector<SetDone> load_sets(SQLite::Database& database) {
    Statement query(
        database,
        "SELECT set_key, athlete_id, date, exercise, set_number, load_kg, reps, reps_in_reserve, "
        "speed_ms, block_id, note FROM set_done WHERE facility_id = $1 ORDER BY athlete_id, date, set_key");
    query.bind(this_facility);
    std::vector<SetDone> sets;
    while (query.step()) {
        query.begin_row();
        std::string key = query.text();
        AthleteId id{query.text()};
        const Date date = query.date();
        std::string exercise = query.text();
        SetDone s{std::move(key), id, date, std::move(exercise), query.whole(), {}, {}, {}, {}, {}, {}};
        s.load = mass_of(query.maybe_number());
        s.reps = query.maybe_whole();
        s.reps_in_reserve = query.maybe_number();
        s.speed = speed_of(query.maybe_number());
        if (const auto block = query.maybe_text())
            s.block = BlockId{*block};
        s.note = query.text();
        sets.push_back(std::move(s));
    }
    return sets;
}

} // namespace amentum
