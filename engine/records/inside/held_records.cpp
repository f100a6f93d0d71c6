#include "records/inside/held_records.h"

#include <cassert>

namespace amentum {
namespace {

// A cell in SI, as the line's file would say it.
std::string said(const RecordColumn& column, const std::string& cell, const LineReader& line) {
    if (cell.empty())
        return "nothing";
    const auto units = units_of(column.holds);
    if (units.empty())
        return "\"" + cell + "\"";
    const FileUnit* unit = line.unit_used(column.name);
    if (!unit)
        unit = &units.front();
    const auto number = parse_number(cell);
    assert(number);
    const std::string text = *unit->suffix ? four_digits(unit->from_si(*number)) : cell;
    return text + (*unit->shown ? std::string(" ") + unit->shown : "");
}

} // namespace

HeldRecords::HeldRecords(RecordKind kind, const RecordSet& held, const NamesOf& names) {
    const auto add = [&](const RecordOnLine& record) {
        auto cells = cells_of(record, names);
        auto identity = identity_of(kind, cells);
        by_identity_.emplace(std::move(identity), std::move(cells));
    };
    for (const auto& record : records_on_lines(kind, held))
        add(record);
    if (kind == RecordKind::kit) // the line that only names a kit is held, whatever stands in it
        for (const auto& kit : held.kits)
            add(ItemOfKit{kit.id, kit.name, kit.unit, {}});
}

const std::vector<std::string>* HeldRecords::cells(const std::string& identity) const {
    const auto found = by_identity_.find(identity);
    return found == by_identity_.end() ? nullptr : &found->second;
}

Difference describe_difference(RecordKind kind, const std::vector<std::string>& held,
                               const std::vector<std::string>& given, const LineReader& line) {
    Difference difference;
    const auto& columns = record_columns(kind);
    for (std::size_t i = 0; i < columns.size(); ++i) {
        if (held[i] == given[i])
            continue;
        const std::string before = said(columns[i], held[i], line);
        const bool as_given =
            !line.said(columns[i].name.c_str()).empty() && !units_of(columns[i].holds).empty();
        const std::string now =
            as_given ? line.said(columns[i].name.c_str()) : said(columns[i], given[i], line);
        difference.words += (difference.words.empty() ? "" : "; ") + columns[i].name + " is held as " +
                            before + ", the file says " + now;
        if (!difference.column.empty())
            continue;
        difference.column = columns[i].name;
        difference.held = before;
        difference.given = now;
    }
    assert(!difference.words.empty());
    return difference;
}

} // namespace amentum
