#include "records/parse_records.h"

#include "measurement/measure_test.h"
#include "records/record_forms.h"

#include <algorithm>
#include <set>
#include <tuple>

namespace amentum {
namespace {

Result<Done> check_columns(RecordKind kind, const CsvTable& table) {
    const auto readable = readable_columns(kind);
    for (const auto& name : table.header) {
        if (std::find(readable.begin(), readable.end(), name) != readable.end()) continue;
        Refusal refusal = refuse_unknown("column", name, readable);
        refusal.code = RefusalCode::unknown_field;
        refusal.field = "line " + std::to_string(table.header_line) + ", " + name;
        refusal.sentence += " A file of " + word(kind) + " has other columns.";
        return refusal;
    }
    for (const auto& name : needed_columns(kind))
        if (!table.column(name)) {
            Refusal refusal = refuse_missing(name, "a column of that name");
            refusal.field = "line " + std::to_string(table.header_line) + ", " + name;
            return refusal;
        }
    return Done{};
}

DecimalMark decimal_mark(const CsvTable& table) {
    for (const auto& comment : table.comments)
        if (comment == "decimal comma") return DecimalMark::comma;
    return DecimalMark::point;
}

std::string joined(const Cells& cells, std::size_t count, const char* between) {
    std::string text;
    for (std::size_t i = 0; i < count; ++i) text += (i ? between : "") + cells[i];
    return text;
}

// Cells apart by a character that cannot stand in a line of text.
std::string whole_text(const Cells& cells) { return joined(cells, cells.size(), "\x1f"); }

// The values in which two lines of one key differ: "load_kg 84 -> 86".
std::string differences(RecordKind kind, const std::string& held, const Cells& given) {
    const auto columns = written_columns(kind);
    std::string text, rest = held;
    for (std::size_t i = 0; i < given.size(); ++i) {
        const std::string before = rest.substr(0, rest.find('\x1f'));
        rest = rest.find('\x1f') == std::string::npos ? "" : rest.substr(rest.find('\x1f') + 1);
        if (before != given[i]) text += (text.empty() ? "" : "; ") + columns[i] + " is held as \"" + before + "\", here \"" + given[i] + "\"";
    }
    return text;
}

// One pass over the lines for a kind whose records are `Record`s.
template <class Record>
struct Pass {
    RecordKind kind;
    const FormContext& context;
    std::map<std::string, std::string> known;  // key -> whole line, of the store and of the lines above
    std::set<std::string> from_file;
    std::vector<Record> fresh;
    std::vector<std::size_t> fresh_lines;  // index into preview.lines, in step with fresh
    ImportPreview preview;

    void know(const Record& record) {
        const auto cells = cells_of(record, context.names);
        known[joined(cells, key_cells(kind), ", ")] = whole_text(cells);
    }

    void take(const RowReader& row, Record record) {
        if (row.refusal()) {
            preview.lines.push_back({row.line(), LineVerdict::refused, "", row.refusal()});
            return;
        }
        const auto cells = cells_of(record, context.names);
        const std::string key = joined(cells, key_cells(kind), ", "), text = whole_text(cells);
        const std::string said = noun_of(kind) + (key.empty() ? "" : ": " + key);
        const auto held = known.find(key);
        if (held == known.end()) {
            known[key] = text;
            from_file.insert(key);
            fresh.push_back(std::move(record));
            fresh_lines.push_back(preview.lines.size());
            preview.lines.push_back({row.line(), LineVerdict::new_record, "adds " + said, {}});
        } else if (held->second == text) {
            const bool twice = from_file.contains(key);
            preview.lines.push_back({row.line(), LineVerdict::already_held, said + (twice ? " stands twice in this file" : " is already held"), {}});
        } else {
            const std::string what = differences(kind, held->second, cells);
            preview.lines.push_back({row.line(), LineVerdict::refused, "",
                Refusal{RefusalCode::already_held, "Line " + std::to_string(row.line()) + ": " + said + " differs from what is " +
                        (from_file.contains(key) ? "higher up in this file" : "already held") + ": " + what + ".",
                        "line " + std::to_string(row.line()), joined(cells, key_cells(kind), ", "), "the values held, or another key"}});
        }
    }
};

template <class Record, class Read, class Known>
Pass<Record> read_lines(RecordKind kind, const CsvTable& table, const FormContext& context, Read read, const Known& known) {
    Pass<Record> pass{kind, context, {}, {}, {}, {}, {}};
    for (const auto& record : known) pass.know(record);
    const DecimalMark mark = decimal_mark(table);
    for (const auto& csv_row : table.rows) {
        RowReader row(table, csv_row, mark);
        Record record = read(row);
        pass.take(row, std::move(record));
    }
    return pass;
}

std::vector<KitLine> kit_lines(const RecordSet& held) {
    std::vector<KitLine> lines;
    for (const auto& kit : held.kits)
        for (const auto& item : kit.items) lines.push_back({kit.name, kit.unit, item});
    return lines;
}

std::vector<LineOfBlock> block_lines(const RecordSet& held) {
    std::vector<LineOfBlock> lines;
    for (const auto& block : held.blocks)
        for (const auto& line : block.lines) lines.push_back({block.id, line});
    return lines;
}

void gather_kits(const std::vector<KitLine>& lines, std::vector<Kit>& kits) {
    for (const auto& line : lines) {
        auto kit = std::find_if(kits.begin(), kits.end(), [&](const auto& k) { return k.id.text == slug(line.kit); });
        if (kit == kits.end()) kit = kits.insert(kits.end(), Kit{KitId{slug(line.kit)}, line.kit, line.unit, {}});
        kit->items.push_back(line.item);
    }
}

void gather_blocks(const std::vector<LineOfBlock>& lines, const RecordSet& held, std::vector<Block>& blocks) {
    for (const auto& line : lines) {
        auto block = std::find_if(blocks.begin(), blocks.end(), [&](const auto& b) { return b.id == line.block; });
        if (block == blocks.end()) {
            Block head = *std::find_if(held.blocks.begin(), held.blocks.end(), [&](const auto& b) { return b.id == line.block; });
            head.lines.clear();
            block = blocks.insert(blocks.end(), std::move(head));
        }
        block->lines.push_back(line.line);
    }
}

// A label twice in one kit with another unit of speech, or a kit spoken in two units, would not survive a round trip.
void refuse_mixed_units(Pass<KitLine>& pass, const RecordSet& held) {
    std::map<std::string, MassUnit> units;
    for (const auto& kit : held.kits) units[kit.id.text] = kit.unit;
    for (std::size_t i = 0; i < pass.fresh.size(); ++i) {
        const auto& line = pass.fresh[i];
        const auto [known, first] = units.try_emplace(slug(line.kit), line.unit);
        if (first || known->second == line.unit) continue;
        auto& preview = pass.preview.lines[pass.fresh_lines[i]];
        preview.verdict = LineVerdict::refused;
        preview.refusal = Refusal{RefusalCode::two_units, "Line " + std::to_string(preview.line) + ": the kit " + line.kit + " speaks " +
                                  word(known->second) + ", but this line says " + word(line.unit) + ".",
                                  "line " + std::to_string(preview.line) + ", unit", word(line.unit), word(known->second)};
    }
}

using DayKey = std::tuple<std::string, std::string, Date, Side>;

// The readings of one athlete, test, day and side must make a result, together with those already held.
void measure_groups(Pass<Reading>& pass, const FormContext& context) {
    std::map<DayKey, std::vector<Reading>> groups;
    std::map<DayKey, std::size_t> last_line;
    for (std::size_t i = 0; i < pass.fresh.size(); ++i) {
        const auto& r = pass.fresh[i];
        const DayKey key{r.athlete.text, r.test, r.date, r.side};
        groups[key].push_back(r);
        last_line[key] = pass.fresh_lines[i];
    }
    for (const auto& r : context.held.readings)
        if (const auto group = groups.find({r.athlete.text, r.test, r.date, r.side}); group != groups.end()) group->second.push_back(r);
    for (auto& [key, readings] : groups) {
        const auto result = measure_test(*context.tables.test_kind(std::get<1>(key)), readings);
        if (result) continue;
        auto& preview = pass.preview.lines[last_line.at(key)];
        Refusal refusal = result.refusal();
        refusal.sentence = "Line " + std::to_string(preview.line) + ": " + refusal.sentence;
        refusal.field = "line " + std::to_string(preview.line) + (refusal.field.empty() ? "" : ", " + refusal.field);
        preview.verdict = LineVerdict::refused;
        preview.words.clear();
        preview.refusal = std::move(refusal);
    }
}

template <class Record>
ImportPreview finished(Pass<Record>&& pass, std::vector<Record> RecordSet::*list) {
    pass.preview.records.*list = std::move(pass.fresh);
    return std::move(pass.preview);
}

ImportPreview read_kind(RecordKind kind, const CsvTable& table, const FormContext& context) {
    const auto with = [&](auto read) { return [&context, read](RowReader& row) { return read(row, context); }; };
    const auto& held = context.held;
    switch (kind) {
    case RecordKind::facility: {
        std::vector<Facility> known;
        if (held.facility) known.push_back(*held.facility);
        auto pass = read_lines<Facility>(kind, table, context, read_facility, known);
        if (!pass.fresh.empty()) pass.preview.records.facility = pass.fresh.front();
        return std::move(pass.preview);
    }
    case RecordKind::kit: {
        auto pass = read_lines<KitLine>(kind, table, context, read_kit_line, kit_lines(held));
        refuse_mixed_units(pass, held);
        gather_kits(pass.fresh, pass.preview.records.kits);
        return std::move(pass.preview);
    }
    case RecordKind::test_results: {
        auto pass = read_lines<Reading>(kind, table, context, with(read_reading), held.readings);
        measure_groups(pass, context);
        return finished(std::move(pass), &RecordSet::readings);
    }
    case RecordKind::block_lines: {
        auto pass = read_lines<LineOfBlock>(kind, table, context, with(read_block_line), block_lines(held));
        gather_blocks(pass.fresh, held, pass.preview.records.blocks);
        return std::move(pass.preview);
    }
    case RecordKind::athletes: return finished(read_lines<Athlete>(kind, table, context, with(read_athlete), held.athletes), &RecordSet::athletes);
    case RecordKind::throws: return finished(read_lines<ThrowEntry>(kind, table, context, with(read_throws), held.throws), &RecordSet::throws);
    case RecordKind::calendar: return finished(read_lines<CalendarEntry>(kind, table, context, with(read_calendar), held.calendar), &RecordSet::calendar);
    case RecordKind::blocks: return finished(read_lines<Block>(kind, table, context, with(read_block), held.blocks), &RecordSet::blocks);
    case RecordKind::sets: return finished(read_lines<SetDone>(kind, table, context, with(read_set), held.sets), &RecordSet::sets);
    case RecordKind::overrides: return finished(read_lines<Override>(kind, table, context, with(read_override), held.overrides), &RecordSet::overrides);
    }
    return {};
}

}  // namespace

int ImportPreview::count(LineVerdict verdict) const {
    return static_cast<int>(std::count_if(lines.begin(), lines.end(), [&](const auto& line) { return line.verdict == verdict; }));
}

Result<ImportPreview> parse_records(RecordKind kind, std::string_view text, const ReferenceTables& tables, const RecordSet& held,
                                    Date today) {
    const auto table = parse_csv(text);
    if (!table) return table.refusal();
    if (const auto columns = check_columns(kind, *table); !columns) return columns.refusal();
    const FormContext context{tables, held, today, NamesInUse(held)};
    ImportPreview preview = read_kind(kind, *table, context);
    if (preview.count(LineVerdict::refused) > 0) preview.records = RecordSet{};
    return preview;
}

}  // namespace amentum
