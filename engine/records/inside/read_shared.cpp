#include "records/inside/read_line.h"
#include "values/letters.h"

#include <algorithm>

namespace amentum {
namespace {

std::vector<std::string> values_in(const std::map<std::string, std::string>& names) {
    std::vector<std::string> values;
    for (const auto& [id, name] : names)
        values.push_back(name);
    return values;
}

const Athlete* held_athlete(const LinesBefore& before, const AthleteId& id) {
    const auto& athletes = before.context.held.athletes;
    const auto found =
        std::find_if(athletes.begin(), athletes.end(), [&](const auto& each) { return each.id == id; });
    return found == athletes.end() ? nullptr : &*found;
}

} // namespace

AthleteId read_athlete_name(LineReader& reader, const LinesBefore& before) {
    const std::string given = reader.needed("athlete");
    if (!given.empty() && !before.names.athletes.contains(slug(given)))
        reader.refuse(refuse_unknown("athlete", given, values_in(before.names.athletes)));
    return {slug(given)};
}

KitId read_kit_name(LineReader& reader, const LinesBefore& before) {
    const std::string given = reader.tidy("kit");
    if (given.empty() && before.names.kits.size() == 1)
        return {before.names.kits.begin()->first};
    if (given.empty())
        reader.refuse(refuse_missing("kit", before.names.kits.empty()
                                                ? "none is held yet: import a kit file first"
                                                : "there is more than one"));
    else if (!before.names.kits.contains(slug(given)))
        reader.refuse(refuse_unknown("kit", given, values_in(before.names.kits)));
    return {slug(given)};
}

Date read_day_lived(LineReader& reader, const LinesBefore& before, const AthleteId& id) {
    const Date day = reader.needed_date("date");
    const Date today = before.context.today;
    if (day > today)
        reader.refuse({RefusalCode::impossible_date, "The day " + day.text() + " is after today.", "date",
                       day.text(), "up to " + today.text()});
    if (const Athlete* athlete = held_athlete(before, id); athlete && day < athlete->birth_date)
        reader.refuse({RefusalCode::impossible_date,
                       "The day " + day.text() + " is before " + athlete->name + " was born.", "date",
                       day.text(), "from " + athlete->birth_date.text()});
    return day;
}

std::string read_exercise(LineReader& reader, const LinesBefore& before) {
    const std::string given = reader.needed("exercise");
    std::vector<std::string> known;
    for (const auto& each : before.context.tables.exercises) {
        if (each.key == given || lower_case(each.name) == lower_case(given))
            return each.key;
        known.push_back(each.key);
        known.push_back(each.name);
    }
    if (!given.empty())
        reader.refuse(refuse_unknown("exercise", given, known));
    return given;
}

std::vector<std::string> read_cautions(LineReader& reader, const LinesBefore& before, const char* column) {
    std::vector<std::string> known, given = reader.keys(column);
    for (const auto& each : before.context.tables.cautions)
        known.push_back(each.key);
    for (const auto& key : given)
        if (std::find(known.begin(), known.end(), key) == known.end()) {
            Refusal refusal = refuse_unknown("caution", key, known);
            refusal.field = column;
            reader.refuse(std::move(refusal));
        }
    return given;
}

std::string read_reason(LineReader& reader) {
    std::string reason = reader.text("reason");
    if (letters_in(reason) < shortest_reason)
        reader.refuse({RefusalCode::missing_field, "Please say why, in a sentence.", "reason", reason,
                       "at least 10 letters"});
    return reason;
}

int read_running_number(LineReader& reader, LinesBefore& before, const std::string& of, const char* called) {
    const int number = reader.needed_whole("number", limits::running_number);
    int& last = before.numbers[of];
    if (number > last + 1) {
        const std::string next = std::to_string(last + 1);
        reader.refuse({RefusalCode::missing_field,
                       "Number " + std::to_string(number) + " comes before " + called + " " + next +
                           " is held: numbers come in order, none left out.",
                       "number", std::to_string(number), "up to " + next});
    }
    last = std::max(last, number);
    return number;
}

Date read_day_recorded(LineReader& reader, const LinesBefore& before, const char* column) {
    const Date day = reader.needed_date(column), today = before.context.today;
    if (day > today)
        reader.refuse({RefusalCode::impossible_date, "The day " + day.text() + " is after today.", column,
                       day.text(), "up to " + today.text()});
    return day;
}

int check_head(LineReader& reader, LinesBefore& before, const HeadOfLines& head) {
    const auto [first, is_first] = before.heads.emplace(head.key, head.cells);
    int& rows = before.rows[head.key];
    if (!is_first && first->second != head.cells)
        reader.refuse(
            {RefusalCode::already_held,
             "The lines above say something else of " + head.called + "; its lines repeat its head.",
             "number", head.called, "the same beside every row"});
    if (!is_first && (rows == 0 || !head.has_row))
        reader.refuse(
            {RefusalCode::already_held,
             "A line of this file says that " + head.called + " has no rows, and another gives one.",
             "number", head.called, "rows, or one line without"});
    return rows += head.has_row ? 1 : 0;
}

LinesBefore lines_before(RecordKind kind, const ImportContext& context, const FileLayout& layout) {
    const RecordSet& held = context.held;
    LinesBefore before{context, layout, NamesOf(held)};
    if (!held.prior_edits.empty())
        before.last_prior_edit = held.prior_edits.back().number;
    if (kind == RecordKind::throws)
        for (const auto& each : held.throws)
            before.throws[each.athlete.text + "\n" + each.date.text()].push_back(each);
    if (kind == RecordKind::pitch_rules && !held.pitch_tables.empty())
        before.numbers[""] = held.pitch_tables.back().number;
    if (kind == RecordKind::pains)
        for (const auto& each : held.pains)
            before.numbers[each.athlete.text] = each.number;
    if (kind == RecordKind::throw_steps)
        for (const auto& each : held.throw_steps)
            before.numbers[each.athlete.text] = each.number;
    return before;
}

} // namespace amentum
