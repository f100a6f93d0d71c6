#include "records/write_records.h"

#include "records/csv.h"
#include "records/record_forms.h"

namespace amentum {
namespace {

struct File {
    RecordKind kind;
    const NamesInUse& names;
    std::string text;

    File(RecordKind of, const NamesInUse& in_use) : kind(of), names(in_use), text(write_csv_line(written_columns(of))) {}

    template <class Record>
    void add(const Record& record) { text += write_csv_line(cells_of(record, names)); }

    RecordFile finished() && { return {word(kind) + ".csv", std::move(text)}; }
};

template <class List>
RecordFile file_of(RecordKind kind, const NamesInUse& names, const List& list) {
    File file(kind, names);
    for (const auto& record : list) file.add(record);
    return std::move(file).finished();
}

}  // namespace

std::vector<RecordFile> write_records(const RecordSet& records) {
    const NamesInUse names(records);
    File facility(RecordKind::facility, names), kit(RecordKind::kit, names), lines(RecordKind::block_lines, names);
    if (records.facility) facility.add(*records.facility);
    for (const auto& each : records.kits)
        for (const auto& item : each.items) kit.add(KitLine{each.name, each.unit, item});
    for (const auto& block : records.blocks)
        for (const auto& line : block.lines) lines.add(LineOfBlock{block.id, line});
    return {std::move(facility).finished(),
            std::move(kit).finished(),
            file_of(RecordKind::athletes, names, records.athletes),
            file_of(RecordKind::test_results, names, records.readings),
            file_of(RecordKind::throws, names, records.throws),
            file_of(RecordKind::calendar, names, records.calendar),
            file_of(RecordKind::blocks, names, records.blocks),
            std::move(lines).finished(),
            file_of(RecordKind::sets, names, records.sets),
            file_of(RecordKind::overrides, names, records.overrides)};
}

}  // namespace amentum
