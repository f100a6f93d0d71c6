#include "records/parse_records.h"

#include "records/inside/check_readings.h"
#include "records/inside/held_records.h"
#include "records/inside/new_records.h"
#include "throwing_workload/check_pitch_table.h"

#include <algorithm>

namespace amentum {
namespace {

RecordOnLine read_line(RecordKind kind, LineReader& reader, LinesBefore& before) {
    switch (kind) {
    case RecordKind::facility:
        return read_facility(reader, before);
    case RecordKind::kit:
        return read_item(reader, before);
    case RecordKind::athletes:
        return read_athlete(reader, before);
    case RecordKind::test_results:
        return read_reading(reader, before);
    case RecordKind::throws:
        return read_throws(reader, before);
    case RecordKind::calendar:
        return read_calendar(reader, before);
    case RecordKind::blocks:
        return read_block(reader, before);
    case RecordKind::block_lines:
        return read_block_line(reader, before);
    case RecordKind::sets:
        return read_set(reader, before);
    case RecordKind::overrides:
        return read_override(reader, before);
    case RecordKind::prior_edits:
        return read_prior_edit(reader, before);
    case RecordKind::pitch_rules:
        return read_pitch_rule(reader, before);
    case RecordKind::teams:
        return read_team(reader, before);
    case RecordKind::pains:
        return read_pain(reader, before);
    case RecordKind::clearances:
        return read_clearance(reader, before);
    case RecordKind::throw_steps:
        return read_throw_step(reader, before);
    case RecordKind::stops_answered:
        return read_stop_answered(reader, before);
    }
    assert(!"every kind of record is read");
    return Facility{};
}

struct JudgedLine {
    LineReader reader;
    RecordOnLine record;
    bool held = false;
};

// Refuses what the file has twice, and what is held with other values.
void judge(RecordKind kind, JudgedLine& line, const LinesBefore& before, const HeldRecords& held,
           std::map<std::string, int>& seen) {
    if (line.reader.refusal())
        return;
    const auto cells = cells_of(line.record, before.names);
    const auto identity = identity_of(kind, cells);
    const auto what = describe_line(line.record, line.reader, before).what;
    if (const auto [first, is_first] = seen.emplace(identity, line.reader.line()); !is_first) {
        line.reader.refuse(
            {RefusalCode::already_held,
             what + ": line " + std::to_string(first->second) + " of this file already says this.", "",
             "lines " + std::to_string(first->second) + " and " + std::to_string(line.reader.line()),
             "a record once in a file"});
        return;
    }
    const auto* kept = held.cells(identity);
    line.held = kept && *kept == cells;
    if (!kept || line.held)
        return;
    const auto difference = describe_difference(kind, *kept, cells, line.reader);
    line.reader.refuse({RefusalCode::already_held,
                        what + ": held with other values: " + difference.words + ".", difference.column,
                        difference.given, difference.held + ", as held"});
}

std::vector<JudgedLine> judged_lines(RecordKind kind, const CsvTable& table, LinesBefore& before) {
    const HeldRecords held(kind, before.context.held, before.names);
    std::map<std::string, int> seen;
    std::vector<JudgedLine> lines;
    lines.reserve(table.rows.size());
    for (const auto& row : table.rows) {
        LineReader reader(before.layout, row);
        auto record = read_line(kind, reader, before);
        lines.push_back({std::move(reader), std::move(record)});
        judge(kind, lines.back(), before, held, seen);
    }
    return lines;
}

void check_tests(std::vector<JudgedLine>& lines, const ImportContext& context) {
    std::vector<NewReading> readings;
    for (auto& line : lines)
        if (!line.held && !line.reader.refusal())
            readings.push_back({std::get<Reading>(line.record), &line.reader});
    check_readings(readings, context);
}

// A table new in this file must be whole: its fault is its first line's.
void check_tables(std::vector<JudgedLine>& lines) {
    struct NewTable {
        LineReader* first;
        std::vector<PitchRule> rules;
    };
    std::map<int, NewTable> tables;
    for (auto& line : lines) {
        if (line.reader.refusal())
            return;
        const auto& row = std::get<RowOfPitchTable>(line.record);
        if (!line.held && row.rule)
            tables.emplace(row.table.number, NewTable{&line.reader, {}})
                .first->second.rules.push_back(*row.rule);
    }
    for (auto& [number, table] : tables) {
        std::sort(table.rules.begin(), table.rules.end(),
                  [](const auto& a, const auto& b) { return a.age_low < b.age_low; });
        if (const auto checked = check_pitch_table(table.rules); !checked)
            table.first->refuse(checked.refusal());
    }
}

LinePreview preview_of(const JudgedLine& line, const LinesBefore& before) {
    if (const auto refusal = line.reader.refusal())
        return {line.reader.line(), Verdict::refused, refusal->sentence, refusal};
    const auto words = describe_line(line.record, line.reader, before);
    if (line.held)
        return {line.reader.line(), Verdict::already_held, "already held: " + words.what, {}};
    return {line.reader.line(), Verdict::added, "adds " + words.noun + ": " + words.what, {}};
}

} // namespace

bool ImportPreview::can_be_taken() const {
    return file_refusals.empty() && count(Verdict::refused) == 0;
}

int ImportPreview::count(Verdict verdict) const {
    return static_cast<int>(
        std::count_if(lines.begin(), lines.end(), [&](const auto& line) { return line.verdict == verdict; }));
}

ImportPreview parse_records(RecordKind kind, std::string_view text, const ImportContext& context) {
    ImportPreview preview{kind, {}, {}, {}};
    const auto table = parse_csv(text);
    if (!table) {
        preview.file_refusals.push_back(table.refusal());
        return preview;
    }
    auto [layout, refusals] = parse_layout({&record_columns(kind), word(kind)}, *table);
    preview.file_refusals = std::move(refusals);
    if (!preview.file_refusals.empty())
        return preview;

    LinesBefore before = lines_before(kind, context, layout);
    auto lines = judged_lines(kind, *table, before);
    if (kind == RecordKind::test_results)
        check_tests(lines, context);
    if (kind == RecordKind::pitch_rules)
        check_tables(lines);
    std::vector<RecordOnLine> added;
    for (const auto& line : lines) {
        preview.lines.push_back(preview_of(line, before));
        if (!line.held)
            added.push_back(line.record);
    }
    if (preview.can_be_taken())
        preview.new_records = new_records(added, context.held);
    return preview;
}

} // namespace amentum
