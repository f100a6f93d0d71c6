// What would this file add? Every line of it: new, already held, or refused and why. Nothing is kept here.
//
// A file is taken whole or not at all: with one refused line `records` is empty. A line whose record is already held
// with the same values adds nothing; with other values it is refused, and both are said. Readings are also measured as
// tests (measure_test), so that what could not be a result is refused on its line.
// A first line "# decimal comma" says that decimals are written with a comma.
// Refuses the whole file: unreadable as a table, a column that is not of this kind, a needed column that is missing.
// Units: in the column names (record_kind.h). What it cannot tell: whether 185 was lb when the column says lb.
#pragma once

#include "records/record_kind.h"
#include "records/reference_tables.h"
#include "values/record_set.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace amentum {

enum class LineVerdict { new_record, already_held, refused };
template <>
inline constexpr std::array<std::pair<LineVerdict, std::string_view>, 3> words_of<LineVerdict>{
    {{LineVerdict::new_record, "new"}, {LineVerdict::already_held, "already_held"}, {LineVerdict::refused, "refused"}}};

struct LinePreview {
    int line;
    LineVerdict verdict;
    std::string words;  // "adds a reading: Ona Reyes, 2026-03-02, split_squat_max, left, 1"
    std::optional<Refusal> refusal;
};

struct ImportPreview {
    std::vector<LinePreview> lines;
    RecordSet records;  // the new ones; empty when any line is refused

    int count(LineVerdict) const;
};

Result<ImportPreview> parse_records(RecordKind kind, std::string_view text, const ReferenceTables& tables,
                                    const RecordSet& held, Date today);

}  // namespace amentum
