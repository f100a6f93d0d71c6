#include "store/sqlite/rows.h"

#include "store/sqlite/new_rows.h"

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
std::optional<double> kilograms(const std::optional<Mass>& m) {
    return number_of(m, [](Mass x) { return x.kilograms(); });
}
std::optional<double> metres(const std::optional<Length>& l) {
    return number_of(l, [](Length x) { return x.metres(); });
}
std::optional<double> speed_ms(const std::optional<Speed>& s) {
    return number_of(s, [](Speed x) { return x.metres_per_second(); });
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
    r.load = quantity_of<Mass>(query.maybe_number(), [](double x) { return Mass::kilograms(x); });
    r.reps = query.maybe_whole();
    r.reps_in_reserve = query.maybe_number();
    r.body_mass = quantity_of<Mass>(query.maybe_number(), [](double x) { return Mass::kilograms(x); });
    r.speed = quantity_of<Speed>(query.maybe_number(), [](double x) { return Speed::metres_per_second(x); });
    r.radar_angle = quantity_of<Angle>(query.maybe_number(), [](double x) { return Angle::degrees(x); });
    r.distance = quantity_of<Length>(query.maybe_number(), [](double x) { return Length::metres(x); });
    r.release_height = quantity_of<Length>(query.maybe_number(), [](double x) { return Length::metres(x); });
    r.release_angle = quantity_of<Angle>(query.maybe_number(), [](double x) { return Angle::degrees(x); });
    r.flight_time =
        quantity_of<Duration>(query.maybe_number(), [](double x) { return Duration::seconds(x); });
    r.height = quantity_of<Length>(query.maybe_number(), [](double x) { return Length::metres(x); });
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

void save_throws(SQLite::Database& database, const std::vector<ThrowEntry>& entries) {
    NewRows row(database, "throw_entry",
                "facility_id, athlete_id, date, setting, count, effort, speed_ms, distance_m, "
                "ball_mass_kg, soreness_before, soreness_after, soreness_next_day, note");
    for (const auto& t : entries)
        row.save(this_facility, t.athlete.text, t.date, word(t.setting), t.count, t.effort, speed_ms(t.speed),
                 metres(t.distance), kilograms(t.ball_mass), t.soreness_before, t.soreness_after,
                 t.soreness_next_day, t.note);
}

std::vector<ThrowEntry> load_throws(SQLite::Database& database) {
    Statement query(database,
                    "SELECT athlete_id, date, setting, count, effort, speed_ms, distance_m, ball_mass_kg, "
                    "soreness_before, soreness_after, soreness_next_day, note FROM throw_entry "
                    "WHERE facility_id = $1 ORDER BY athlete_id, date, setting");
    query.bind(this_facility);
    std::vector<ThrowEntry> entries;
    while (query.step()) {
        query.begin_row();
        AthleteId id{query.text()};
        const Date date = query.date();
        const auto setting = query.choice<ThrowSetting>();
        ThrowEntry t{id, date, setting, query.whole(), {}, {}, {}, {}, {}, {}, {}, {}};
        t.effort = query.maybe_number();
        t.speed =
            quantity_of<Speed>(query.maybe_number(), [](double x) { return Speed::metres_per_second(x); });
        t.distance = quantity_of<Length>(query.maybe_number(), [](double x) { return Length::metres(x); });
        t.ball_mass = quantity_of<Mass>(query.maybe_number(), [](double x) { return Mass::kilograms(x); });
        t.soreness_before = query.maybe_number();
        t.soreness_after = query.maybe_number();
        t.soreness_next_day = query.maybe_number();
        t.note = query.text();
        entries.push_back(std::move(t));
    }
    return entries;
}

void save_blocks(SQLite::Database& database, const std::vector<Block>& blocks) {
    NewRows head(
        database, "block",
        "facility_id, block_id, athlete_id, kit_id, start, weeks, sessions_per_week, minutes, notes, model");
    NewRows row(database, "block_line",
                "facility_id, block_id, week, session, place, date, exercise, part, sets, reps, intensity, "
                "reps_in_reserve, load_kg, load_words, rest_minutes, purpose, reason, overridden");
    for (const auto& b : blocks) {
        head.save(this_facility, b.id.text, b.athlete.text, b.kit.text, b.start, b.weeks, b.sessions_per_week,
                  b.minutes, joined_lines(b.notes), b.model);
        for (const auto& l : b.lines)
            row.save(this_facility, b.id.text, l.week, l.session, l.order, l.date, l.exercise, word(l.part),
                     l.sets, l.reps, l.intensity, l.reps_in_reserve, kilograms(l.load), l.load_words,
                     l.rest_minutes, l.purpose, l.reason, joined_lines(l.overridden));
    }
}

namespace {

std::vector<BlockLine> lines_of(SQLite::Database& database, const BlockId& block) {
    Statement query(
        database,
        "SELECT week, session, date, place, exercise, part, sets, reps, intensity, reps_in_reserve, "
        "load_kg, load_words, rest_minutes, purpose, reason, overridden FROM block_line "
        "WHERE facility_id = $1 AND block_id = $2 ORDER BY week, session, place");
    query.bind(this_facility, block.text);
    std::vector<BlockLine> lines;
    while (query.step()) {
        query.begin_row();
        const int week = query.whole(), session = query.whole();
        const Date date = query.date();
        const int place = query.whole();
        std::string exercise = query.text();
        const auto part = query.choice<Part>();
        const int sets = query.whole(), reps = query.whole();
        BlockLine l{week, session, date, place, std::move(exercise), part, sets, reps, {}, {}, {}, {},
                    0,    {},      {},   {}};
        l.intensity = query.maybe_number();
        l.reps_in_reserve = query.maybe_number();
        l.load = quantity_of<Mass>(query.maybe_number(), [](double x) { return Mass::kilograms(x); });
        l.load_words = query.text();
        l.rest_minutes = query.number();
        l.purpose = query.text();
        l.reason = query.text();
        l.overridden = split_lines(query.text());
        lines.push_back(std::move(l));
    }
    return lines;
}

} // namespace

std::vector<Block> load_blocks(SQLite::Database& database) {
    Statement query(
        database,
        "SELECT block_id, athlete_id, kit_id, start, weeks, sessions_per_week, minutes, notes, model "
        "FROM block WHERE facility_id = $1 ORDER BY block_id");
    query.bind(this_facility);
    std::vector<Block> blocks;
    while (query.step()) {
        query.begin_row();
        BlockId id{query.text()};
        AthleteId athlete{query.text()};
        KitId kit{query.text()};
        const Date start = query.date();
        const int weeks = query.whole(), sessions = query.whole();
        const double minutes = query.number();
        auto notes = split_lines(query.text());
        blocks.push_back({id, athlete, kit, start, weeks, sessions, minutes, lines_of(database, id),
                          std::move(notes), query.text()});
    }
    return blocks;
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
        s.load = quantity_of<Mass>(query.maybe_number(), [](double x) { return Mass::kilograms(x); });
        s.reps = query.maybe_whole();
        s.reps_in_reserve = query.maybe_number();
        s.speed =
            quantity_of<Speed>(query.maybe_number(), [](double x) { return Speed::metres_per_second(x); });
        if (const auto block = query.maybe_text())
            s.block = BlockId{*block};
        s.note = query.text();
        sets.push_back(std::move(s));
    }
    return sets;
}

} // namespace amentum
