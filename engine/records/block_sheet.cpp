#include "records/block_sheet.h"

#include "records/csv.h"
#include "records/inside/place_sheet.h"
#include "records/inside/units.h"
#include "values/nearest_name.h"
#include "values/shortest_decimal.h"

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

using enum Holds;
using enum Need;

std::vector<RecordColumn> columns_of_a_sheet() {
    const auto may = [](const char* name, Holds holds, const char* meaning, const char* also = "") {
        return RecordColumn{name, holds, optional, Identity::none, meaning, also};
    };
    const auto must = [](const char* name, Holds holds, const char* meaning) {
        return RecordColumn{name, holds, needed, Identity::none, meaning, ""};
    };
    return {may("week", whole, "1 to 16; may be left out where there is a date"),
            may("session", whole, "within the week, 1 to 7; the session of its day when empty"),
            may("order", whole, "within the session; the order of the lines when empty"),
            may("date", date, "the day of the session, as 2026-03-14"),
            may("weekday", text, "or its name, monday to sunday", "day"),
            must("exercise", text, "key or name of the exercise"),
            must("sets", whole, "1 to 40"),
            must("reps", whole, "in each set, 1 to 100"),
            may("load", mass, "total, as the lift counts it; for pull-ups added"),
            may("load_words", text, "instead of a load: \"red band\""),
            may("reps_in_reserve", number, "at the end of each set, 0 to 20", "reserve"),
            may("intensity", fraction, "of the lift's estimated maximum"),
            may("rest_minutes", number, "0 to 60; as usual for such a line when empty", "rest"),
            may("part", text,
                "speed, main_lift, assistance, shoulder, trunk or mobility; the exercise's own when empty"),
            may("purpose", text, "key of the quality it serves; what the exercise serves most when empty"),
            may("reason", text, "why, for the sheet", "note"),
            may("overridden", text, "cautions overridden with a kept reason, several divided by ';'")};
}

bool shares_words(const std::string& name, const std::vector<std::string>& words) {
    const std::string lower = lower_case(name);
    return std::all_of(words.begin(), words.end(),
                       [&](const std::string& word) { return lower.find(word) != std::string::npos; });
}

std::vector<std::string> words_of_text(const std::string& text) {
    std::vector<std::string> words;
    std::string word;
    for (const char c : lower_case(text) + " ") {
        if (c != ' ' && c != '-' && c != '_' && c != ',') {
            word += c;
            continue;
        }
        if (word.size() > 2)
            words.push_back(word);
        word.clear();
    }
    return words;
}

// The nearest spelling, and up to three names that hold every word that was given.
Refusal refuse_exercise(const std::string& given, const ReferenceTables& tables) {
    std::vector<std::string> known, alike;
    const auto words = words_of_text(given);
    for (const auto& each : tables.exercises) {
        known.push_back(each.key);
        known.push_back(each.name);
        if (!words.empty() && alike.size() < 3 && shares_words(each.name, words))
            alike.push_back(each.name);
    }
    Refusal refusal = refuse_unknown("exercise", given, known);
    if (alike.empty() || nearest_name(given, known))
        return refusal;
    std::string listed;
    for (const auto& name : alike)
        listed += (listed.empty() ? "\"" : ", \"") + name + "\"";
    refusal.sentence = "There is no exercise \"" + given + "\". Its words are in " + listed + ".";
    refusal.allowed = listed;
    return refusal;
}

const Exercise* read_exercise(LineReader& reader, const ReferenceTables& tables) {
    const std::string given = reader.needed("exercise");
    for (const auto& each : tables.exercises)
        if (each.key == given || lower_case(each.name) == lower_case(given))
            return &each;
    if (!given.empty())
        reader.refuse(refuse_exercise(given, tables));
    return nullptr;
}

std::optional<int> read_weekday(LineReader& reader) {
    static const std::vector<std::string> names{"monday", "tuesday",  "wednesday", "thursday",
                                                "friday", "saturday", "sunday"};
    const std::string given = lower_case(reader.tidy("weekday"));
    if (given.empty())
        return std::nullopt;
    for (std::size_t i = 0; i < names.size(); ++i)
        if (given == names[i] || (given.size() == 3 && names[i].starts_with(given)))
            return static_cast<int>(i) + 1;
    reader.refuse(refuse_choice("weekday", given, names));
    return std::nullopt;
}

std::string purpose_of(LineReader& reader, const ReferenceTables& tables, const Exercise* exercise) {
    const std::string given = reader.tidy("purpose");
    if (!given.empty()) {
        std::vector<std::string> keys;
        for (const auto& each : tables.qualities)
            keys.push_back(each.key);
        if (std::find(keys.begin(), keys.end(), given) == keys.end())
            reader.refuse(refuse_unknown("purpose", given, keys));
        return given;
    }
    if (!exercise || exercise->qualities.empty())
        return "";
    return std::max_element(exercise->qualities.begin(), exercise->qualities.end(),
                            [](const auto& a, const auto& b) { return a.second < b.second; })
        ->first;
}

std::vector<std::string> read_overridden(LineReader& reader, const ReferenceTables& tables) {
    std::vector<std::string> given = reader.keys("overridden"), known;
    for (const auto& each : tables.cautions)
        known.push_back(each.key);
    for (const auto& key : given)
        if (std::find(known.begin(), known.end(), key) == known.end()) {
            Refusal refusal = refuse_unknown("caution", key, known);
            refusal.field = "overridden";
            reader.refuse(std::move(refusal));
        }
    return given;
}

SheetRow read_row(LineReader& reader, const ReferenceTables& tables) {
    const Exercise* exercise = read_exercise(reader, tables);
    const auto rest = reader.number("rest_minutes", limits::rest_minutes);
    const auto part = reader.choice<Part>("part");
    SheetRow row{
        reader.whole("week", {1, limits::weeks.high}),
        reader.whole("session", {1, 7}),
        reader.whole("order", limits::line_order),
        reader.date("date"),
        read_weekday(reader),
        {{0, 0, Date::from_days(0), 0, exercise ? exercise->key : "",
          part.value_or(exercise ? exercise->part : Part::assistance),
          reader.needed_whole("sets", limits::line_sets), reader.needed_whole("reps", limits::reps),
          reader.number("intensity", limits::intensity),
          reader.number("reps_in_reserve", limits::reps_in_reserve), reader.mass("load", limits::load_kg),
          reader.text("load_words"), rest.value_or(0), purpose_of(reader, tables, exercise),
          reader.text("reason"), read_overridden(reader, tables)},
         rest.has_value(),
         reader.line(),
         reader.file_name_of("load")}};
    if (!row.week && !row.date)
        reader.refuse({RefusalCode::missing_field, "Neither week nor date says when this is done.", "week",
                       "", "a week, 1 to 16, or a date"});
    return row;
}

} // namespace

const std::vector<RecordColumn>& block_sheet_columns() {
    static const std::vector<RecordColumn> columns = columns_of_a_sheet();
    return columns;
}

Result<BlockSheet> parse_block_sheet(std::string_view text, const BlockSheetContext& context) {
    const auto table = parse_csv(text);
    if (!table)
        return table.refusal();
    auto [layout, problems] = parse_layout({&block_sheet_columns(), "a block"}, *table);
    if (problems.empty() && table->rows.empty())
        problems.push_back({RefusalCode::missing_field, "The file has columns, but no line below them.",
                            "line " + std::to_string(table->header_line), "", "one line or more"});
    if (!problems.empty())
        return BlockSheet{std::move(problems), context.start.value_or(context.otherwise), 0, 0, {}, {}};
    std::vector<SheetRow> rows;
    for (const auto& row : table->rows) {
        LineReader reader(layout, row);
        rows.push_back(read_row(reader, context.tables));
        problems.insert(problems.end(), reader.refusals().begin(), reader.refusals().end());
    }
    if (!problems.empty())
        return BlockSheet{std::move(problems), context.start.value_or(context.otherwise), 0, 0, {}, {}};
    return place_sheet(std::move(rows), context);
}

std::string write_block_sheet(const Block& block, MassUnit unit) {
    const bool pounds = unit == MassUnit::lb;
    std::vector<std::string> header;
    for (const auto& column : block_sheet_columns())
        if (column.name != "weekday")
            header.push_back(column.name == "load" ? (pounds ? "load_lb" : "load_kg")
                                                   : header_names(column).front());
    std::string text = write_csv_line(header);
    const auto number = [](std::optional<double> x) { return x ? format_shortest(*x) : std::string(); };
    for (const auto& line : block.lines) {
        std::optional<double> load;
        if (line.load) // without the last bits of a unit's conversion: 230, not 229.99999999999997
            load = std::round((pounds ? line.load->pounds() : line.load->kilograms()) * 1e6) / 1e6;
        std::string overridden;
        for (const auto& key : line.overridden)
            overridden += (overridden.empty() ? "" : ";") + key;
        const std::vector<std::string> cells{std::to_string(line.week),
                                             std::to_string(line.session),
                                             std::to_string(line.order),
                                             line.date.text(),
                                             line.exercise,
                                             std::to_string(line.sets),
                                             std::to_string(line.reps),
                                             number(load),
                                             line.load_words,
                                             number(line.reps_in_reserve),
                                             number(line.intensity),
                                             format_shortest(line.rest_minutes),
                                             word(line.part),
                                             line.purpose,
                                             line.reason,
                                             overridden};
        text += write_csv_line(cells);
    }
    return text;
}

} // namespace amentum
