// Which column of the file is which, in which unit, and which decimal mark its numbers have.
#pragma once

#include "records/csv.h"
#include "records/inside/units.h"
#include "records/record_columns.h"
#include "values/shortest_decimal.h"

#include <vector>

namespace amentum {

struct FileColumn {
    const RecordColumn* column;
    const FileUnit* unit; // null for what is no quantity
    std::string name;     // as the file's header has it
};

// The columns a file may have, and what it is called in a sentence: "A file of throws has no column ...".
struct KnownColumns {
    const std::vector<RecordColumn>* columns;
    std::string file_of;
};

struct FileLayout {
    const std::vector<RecordColumn>* known;
    std::vector<FileColumn> columns; // in the file's order
    DecimalMark mark = DecimalMark::point;
    bool commas_are_unclear = false; // a comma in a number may be a decimal or a thousands mark
};

// The layout, or every fault of the header line.
struct LayoutOrRefusals {
    FileLayout layout;
    std::vector<Refusal> refusals;
};

LayoutOrRefusals parse_layout(const KnownColumns& known, const CsvTable& table);

std::string trimmed(std::string_view text);    // without spaces and line breaks at both ends
std::string lower_case(std::string_view text); // ASCII letters only

} // namespace amentum
