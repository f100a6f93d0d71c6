// Tests, days and sets: what was done, and when.
#include "records/inside/read_line.h"

#include "inference/random_stream.h"
#include "values/letters.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <charconv>

namespace amentum {
namespace {

std::string read_test(LineReader& reader, const LinesBefore& before) {
    const std::string given = reader.needed("test");
    std::vector<std::string> known;
    for (const auto& each : before.context.tables.test_kinds) {
        if (each.key == given || lower_case(each.name) == lower_case(given))
            return each.key;
        known.push_back(each.key);
        known.push_back(each.name);
    }
    if (!given.empty())
        reader.refuse(refuse_unknown("test", given, known));
    return given;
}

int read_trial(LineReader& reader, LinesBefore& before, const Reading& r) {
    int& highest = before.trials[r.athlete.text + "\n" + r.date.text() + "\n" + r.test + "\n" + word(r.side)];
    const int trial = reader.whole("trial", limits::trial).value_or(highest + 1);
    if (trial > limits::trial.high)
        reader.refuse(refuse_range("trial", trial, limits::trial.low, limits::trial.high, "",
                                   "This test has too many lines."));
    highest = std::max(highest, trial);
    return trial;
}

void read_quantities(LineReader& reader, Reading& r) {
    r.load = reader.mass("load", limits::load_kg);
    r.reps = reader.whole("reps", limits::reps);
    r.reps_in_reserve = reader.number("reps_in_reserve", limits::reps_in_reserve);
    r.body_mass = reader.mass("body_mass", limits::body_mass_kg);
    r.speed = reader.speed("speed", limits::speed_ms);
    r.radar_angle = reader.angle("radar_angle", limits::radar_angle_deg);
    r.distance = reader.length("distance", limits::distance_m);
    r.release_height = reader.length("release_height", limits::release_height_m);
    r.release_angle = reader.angle("release_angle", limits::release_angle_deg);
    r.flight_time = reader.time("flight_time", limits::flight_time_s);
    r.contact_time = reader.time("contact_time", limits::contact_time_s);
    r.height = reader.length("height", limits::height_m);
    r.angle = reader.angle("angle", limits::angle_deg);
    r.force = reader.force("force", limits::force_n);
    r.power = reader.power("power", limits::power_w);
}

// The same line is the same set on any machine.
std::string key_made(const SetDone& set) {
    const std::uint64_t hash = seed_from(0, set.athlete.text + "\n" + set.date.text() + "\n" + set.exercise +
                                                "\n" + std::to_string(set.set_number));
    std::array<char, 16> digits;
    const auto end = std::to_chars(digits.data(), digits.data() + digits.size(), hash, 16).ptr;
    return "file-" + std::string(digits.data(), end);
}

void read_key(LineReader& reader, SetDone& set) {
    set.key = reader.tidy("key");
    if (set.key.empty())
        set.key = key_made(set);
    const bool fit = set.key.size() >= 8 && set.key.size() <= 64 &&
                     std::all_of(set.key.begin(), set.key.end(), [](char c) {
                         return c == '-' || (static_cast<unsigned char>(c) < 128 &&
                                             std::isalnum(static_cast<unsigned char>(c)));
                     });
    if (!fit)
        reader.refuse({RefusalCode::wrong_type,
                       "The key \"" + set.key + "\" is not 8 to 64 letters, digits or '-'.", "key", set.key,
                       "8 to 64 letters, digits or '-'; or empty"});
}

} // namespace

RecordOnLine read_reading(LineReader& reader, LinesBefore& before) {
    const AthleteId athlete = read_athlete_name(reader, before);
    Reading r{athlete, read_day_lived(reader, before, athlete), read_test(reader, before)};
    r.side = reader.choice<Side>("side").value_or(Side::none);
    r.trial = read_trial(reader, before, r);
    read_quantities(reader, r);
    r.device = reader.tidy("device");
    r.rater = reader.tidy("rater");
    r.place = reader.choice<PlaceMeasured>("place_measured").value_or(PlaceMeasured::unknown);
    r.note = reader.text("note");
    return r;
}

RecordOnLine read_calendar(LineReader& reader, LinesBefore& before) {
    const AthleteId athlete = read_athlete_name(reader, before);
    const Date first = reader.needed_date("date");
    const Date last = reader.date("last_date").value_or(first);
    if (!reader.refusal() && (last < first || last - first > limits::calendar_days))
        reader.refuse({RefusalCode::impossible_date,
                       "The last day, " + last.text() + ", must be " + first.text() + " or up to " +
                           std::to_string(limits::calendar_days) + " days later.",
                       "last_date", last.text(),
                       first.text() + " or up to " + std::to_string(limits::calendar_days) + " days later"});
    return CalendarEntry{athlete, first, last, reader.needed_choice<DayKind>("kind"), reader.text("note")};
}

RecordOnLine read_set(LineReader& reader, LinesBefore& before) {
    const AthleteId athlete = read_athlete_name(reader, before);
    SetDone set{"",
                athlete,
                read_day_lived(reader, before, athlete),
                read_exercise(reader, before),
                reader.needed_whole("set_number", limits::set_number),
                {},
                {},
                {},
                {},
                {},
                reader.text("note")};
    read_key(reader, set);
    set.load = reader.mass("load", limits::load_kg);
    set.reps = reader.whole("reps", limits::reps);
    set.reps_in_reserve = reader.number("reps_in_reserve", limits::reps_in_reserve);
    set.speed = reader.speed("speed", limits::speed_ms);
    const std::string block = reader.tidy("block");
    if (!block.empty())
        set.block = BlockId{block};
    return set;
}

RecordOnLine read_override(LineReader& reader, LinesBefore& before) {
    const AthleteId athlete = read_athlete_name(reader, before);
    const Date date = read_day_lived(reader, before, athlete);
    const auto cautions = read_cautions(reader, before, "caution");
    if (cautions.size() != 1)
        reader.refuse(refuse_missing("caution", "the key of one caution"));
    Override made{athlete,
                  read_exercise(reader, before),
                  cautions.empty() ? "" : cautions.front(),
                  reader.text("reason"),
                  reader.needed("coach"),
                  date};
    if (letters_in(made.reason) < shortest_reason)
        reader.refuse({RefusalCode::caution_needs_reason,
                       "Please say why the caution is overridden, in a sentence.", "reason", made.reason,
                       "at least 10 letters"});
    return made;
}

} // namespace amentum
