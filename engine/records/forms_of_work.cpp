// Readings, throws, blocks, sets: a line to a value and back.
#include "records/record_forms.h"

#include <algorithm>
#include <cctype>

namespace amentum {
namespace {

template <class Q, class Read>
std::string cell(const std::optional<Q>& quantity, Read read) {
    return quantity ? format_shortest(read(*quantity)) : "";
}
std::string mass_cell(const std::optional<Mass>& m) { return cell(m, [](Mass x) { return x.kilograms(); }); }
std::string length_cell(const std::optional<Length>& l) { return cell(l, [](Length x) { return x.metres(); }); }
std::string speed_cell(const std::optional<Speed>& s) { return cell(s, [](Speed x) { return x.metres_per_second(); }); }
std::string angle_cell(const std::optional<Angle>& a) { return cell(a, [](Angle x) { return x.degrees(); }); }
std::string number_cell(const std::optional<double>& x) { return x ? format_shortest(*x) : ""; }
std::string whole_cell(const std::optional<int>& x) { return x ? std::to_string(*x) : ""; }

std::string joined_lines(const std::vector<std::string>& lines) {
    std::string text;
    for (const auto& line : lines) text += (text.empty() ? "" : "\n") + line;
    return text;
}

std::string name_of(const NamesInUse& names, const AthleteId& id) {
    const auto found = names.athletes.find(id.text);
    return found == names.athletes.end() ? id.text : found->second;
}

AthleteId athlete_in(RowReader& row, const FormContext& context) {
    const std::string name = row.needed_text("athlete", "the thrower's name");
    if (!name.empty() && !context.names.athletes.contains(slug(name))) {
        std::vector<std::string> known;
        for (const auto& [id, each] : context.names.athletes) known.push_back(each);
        row.refuse(refuse_unknown("athlete", name, known));
    }
    return AthleteId{slug(name)};
}

Date past_date(RowReader& row, Date today) {
    const Date date = row.date("date");
    if (date > today)
        row.refuse({RefusalCode::impossible_date, "date is " + date.text() + ", after today.", "date", date.text(), "up to " + today.text()});
    return date;
}

std::string exercise_in(RowReader& row, const ReferenceTables& tables) {
    const std::string key = row.needed_text("exercise", "the exercise's key");
    if (!key.empty() && !tables.exercise(key)) {
        std::vector<std::string> known;
        for (const auto& each : tables.exercises) known.push_back(each.key);
        row.refuse(refuse_unknown("exercise", key, known));
    }
    return key;
}

std::string test_in(RowReader& row, const ReferenceTables& tables) {
    const std::string key = row.needed_text("test", "the test kind's key");
    if (!key.empty() && !tables.test_kind(key)) {
        std::vector<std::string> known;
        for (const auto& kind : tables.test_kinds) known.push_back(kind.key);
        row.refuse(refuse_unknown("test", key, known));
    }
    return key;
}

}  // namespace

Reading read_reading(RowReader& row, const FormContext& context) {
    Reading r{athlete_in(row, context), past_date(row, context.today), test_in(row, context.tables)};
    r.side = row.choice<Side>("side", Side::none);
    r.trial = row.whole("trial", 1, 60).value_or(1);
    r.load = row.mass("load", -100, 600);
    r.reps = row.whole("reps", 1, 100);
    r.reps_in_reserve = row.number("reps_in_reserve", 0, 20);
    r.body_mass = row.mass("body_mass", 15, 250);
    r.speed = row.speed("speed", 0.2, 60);
    r.radar_angle = row.angle("radar_angle", 0, 60);
    r.distance = row.length("distance", 0.05, 150);
    r.release_height = row.length("release_height", 0, 3.5);
    r.release_angle = row.angle("release_angle", -60, 85);
    r.flight_time = row.duration("flight_time", 0.05, 1.5);
    r.height = row.length("height", 0.005, 2.5);
    r.angle = row.angle("angle", -60, 260);
    r.force = row.force("force", 1, 20000);
    r.device = row.text("device");
    r.rater = row.text("rater");
    r.place = row.choice<PlaceMeasured>("place_measured", PlaceMeasured::unknown);
    r.note = row.text("note");
    return r;
}

Cells cells_of(const Reading& r, const NamesInUse& names) {
    return {name_of(names, r.athlete), r.date.text(), r.test, word(r.side), std::to_string(r.trial), mass_cell(r.load), whole_cell(r.reps),
            number_cell(r.reps_in_reserve), mass_cell(r.body_mass), speed_cell(r.speed), angle_cell(r.radar_angle),
            length_cell(r.distance), length_cell(r.release_height), angle_cell(r.release_angle),
            cell(r.flight_time, [](Duration x) { return x.seconds(); }), length_cell(r.height), angle_cell(r.angle),
            cell(r.force, [](Force x) { return x.newtons(); }), r.device, r.rater, word(r.place), r.note};
}

ThrowEntry read_throws(RowReader& row, const FormContext& context) {
    ThrowEntry t{athlete_in(row, context), past_date(row, context.today), row.choice<ThrowSetting>("setting"),
                 row.needed_whole("count", 1, 400), {}, {}, {}, {}, {}, {}, {}, {}};
    t.effort = row.number("effort", 0.1, 1);
    if (const auto percent = row.number("effort_percent", 10, 100, "%")) t.effort = *percent / 100;
    t.speed = row.speed("speed", 2, 56);
    t.distance = row.length("distance", 0.3, 150);
    t.ball_mass = row.mass("ball_mass", 0.02, 9);
    t.soreness_before = row.number("soreness_before", 0, 10);
    t.soreness_after = row.number("soreness_after", 0, 10);
    t.soreness_next_day = row.number("soreness_next_day", 0, 10);
    t.note = row.text("note");
    return t;
}

Cells cells_of(const ThrowEntry& t, const NamesInUse& names) {
    return {name_of(names, t.athlete), t.date.text(), word(t.setting), std::to_string(t.count),
            number_cell(t.effort), speed_cell(t.speed), length_cell(t.distance), mass_cell(t.ball_mass),
            number_cell(t.soreness_before), number_cell(t.soreness_after), number_cell(t.soreness_next_day), t.note};
}

Block read_block(RowReader& row, const FormContext& context) {
    BlockId id{row.needed_text("block", "the block's id")};
    const auto athlete = athlete_in(row, context);
    KitId kit{slug(row.needed_text("kit", "the gym's name"))};
    Block b{id, athlete, kit, row.date("start"), row.needed_whole("weeks", 4, 16), row.needed_whole("sessions_per_week", 1, 5),
            row.needed_number("minutes", 20, 120, "min"), {}, row.words("notes", '\n'), row.text("model")};
    if (!context.names.kits.contains(b.kit.text)) row.refuse(refuse_unknown("kit", row.text("kit"), {}));
    return b;
}

Cells cells_of(const Block& b, const NamesInUse& names) {
    const auto kit = names.kits.find(b.kit.text);
    return {b.id.text, name_of(names, b.athlete), kit == names.kits.end() ? b.kit.text : kit->second, b.start.text(),
            std::to_string(b.weeks), std::to_string(b.sessions_per_week), format_shortest(b.minutes), joined_lines(b.notes), b.model};
}

LineOfBlock read_block_line(RowReader& row, const FormContext& context) {
    LineOfBlock l{BlockId{row.needed_text("block", "the block's id")},
                  {row.needed_whole("week", 1, 16), row.needed_whole("session", 1, 5), row.date("date"), row.needed_whole("order", 1, 40),
                   exercise_in(row, context.tables), row.choice<Part>("part"), row.needed_whole("sets", 1, 20),
                   row.needed_whole("reps", 1, 100), row.number("intensity", 0.05, 1.1), row.number("reps_in_reserve", 0, 20),
                   row.mass("load", -100, 600), row.text("load_words"), row.needed_number("rest_minutes", 0, 15, "min"),
                   row.needed_text("purpose", "the quality it serves"), row.needed_text("reason", "why this line"),
                   row.words("overridden", ';')}};
    const auto& blocks = context.held.blocks;
    if (std::none_of(blocks.begin(), blocks.end(), [&](const auto& b) { return b.id == l.block; }))
        row.refuse(refuse_unknown("block", l.block.text, {}));
    return l;
}

Cells cells_of(const LineOfBlock& l, const NamesInUse&) {
    const auto& x = l.line;
    std::string overridden;
    for (const auto& key : x.overridden) overridden += (overridden.empty() ? "" : ";") + key;
    return {l.block.text, std::to_string(x.week), std::to_string(x.session), std::to_string(x.order), x.date.text(), x.exercise,
            word(x.part), std::to_string(x.sets), std::to_string(x.reps), number_cell(x.intensity), number_cell(x.reps_in_reserve),
            mass_cell(x.load), x.load_words, format_shortest(x.rest_minutes), x.purpose, x.reason, overridden};
}

SetDone read_set(RowReader& row, const FormContext& context) {
    const std::string key = row.needed_text("key", "8 to 64 letters, digits or '-'");
    const bool fit = key.size() >= 8 && key.size() <= 64 && std::all_of(key.begin(), key.end(), [](char c) {
        return std::isalnum(static_cast<unsigned char>(c)) || c == '-';
    });
    if (!key.empty() && !fit)
        row.refuse({RefusalCode::wrong_type, "key must be 8 to 64 letters, digits or '-'.", "key", key, "8 to 64 letters, digits or '-'"});
    SetDone s{key, athlete_in(row, context), past_date(row, context.today), exercise_in(row, context.tables),
              row.needed_whole("set_number", 1, 40), row.mass("load", -100, 600), row.whole("reps", 1, 100),
              row.number("reps_in_reserve", 0, 20), row.speed("speed", 0.5, 60), {}, row.text("note")};
    if (const std::string block = row.text("block"); !block.empty()) s.block = BlockId{block};
    return s;
}

Cells cells_of(const SetDone& s, const NamesInUse& names) {
    return {s.key, name_of(names, s.athlete), s.date.text(), s.exercise, std::to_string(s.set_number), mass_cell(s.load),
            whole_cell(s.reps), number_cell(s.reps_in_reserve), speed_cell(s.speed), s.block ? s.block->text : "", s.note};
}

}  // namespace amentum
