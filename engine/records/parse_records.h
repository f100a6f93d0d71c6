// What does this file say, line by line, and what would taking it do?
//
// Every line gets a verdict: `added` (new), `already_held` (the very same record is held: nothing to do), or `refused`
// with the line, the column, what was given and what is allowed. A record held under the same key with other values is
// refused, and both values are said. One refused line, or one fault of the whole file, and nothing is to be taken:
// `new_records` is then empty. Taking the same file twice therefore adds nothing the second time.
//
// Columns: record_columns.h; text: csv.h. A test's readings of one day must pass measure_test, each and together with
// those held, so that a 900-lb split squat is refused on its line.
// Decimal mark: a comment line "# decimal comma" or "# decimal point" before the header settles it. Otherwise it is the
// point, except in a file separated by ';' whose numbers have commas, no points, and at least one comma that cannot be
// a thousands mark ("97,5", not "1,234"): then the comma. Any other comma in a number is refused, never guessed at.
// Thousands marks are never accepted.
// Lines of tests without a trial number are numbered in their order; sets without a key get one made from athlete, day,
// exercise and set number, so that the same line is the same set.
// What it cannot tell: whether the numbers were measured well, or belong to the athlete named.
//
// Example: parse_records(RecordKind::throws, "athlete,date,setting,count\nOna Reyes,2026-03-02,bullpen,35\n", context)
//   .lines[0].words == "adds throws: Ona Reyes, 2026-03-02, bullpen, 35 throws"
#pragma once

#include "records/record_kind.h"
#include "records/reference_tables.h"
#include "values/record_set.h"
#include "values/refusal.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace amentum {

struct ImportContext {
    const ReferenceTables& tables;
    const RecordSet& held;
    Date today;
};

enum class Verdict { added, already_held, refused };
template <>
inline constexpr std::array<std::pair<Verdict, std::string_view>, 3> words_of<Verdict>{
    {{Verdict::added, "new"}, {Verdict::already_held, "already_held"}, {Verdict::refused, "refused"}}};

struct LinePreview {
    int line; // of the file, 1 ...
    Verdict verdict;
    std::string words;              // what would be done, or the refusal's sentence
    std::optional<Refusal> refusal; // field: "line 7, load_lb"
};

struct ImportPreview {
    RecordKind kind;
    std::vector<Refusal> file_refusals; // unreadable; unknown or missing columns
    std::vector<LinePreview> lines;
    RecordSet new_records;

    bool can_be_taken() const;
    int count(Verdict verdict) const;
};

ImportPreview parse_records(RecordKind kind, std::string_view text, const ImportContext& context);

} // namespace amentum
