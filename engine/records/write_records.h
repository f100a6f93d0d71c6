// How are records written back? As the files parse_records reads, in the order in which they can be taken.
//
// SI units, shortest decimals that read back as the same double, CRLF lines [Rfc4180]. Importing all files into an empty
// store gives an equal store, and writing that store again gives the same bytes.
// Contract (asserted): every record's athlete and kit are in the set, and ids are the slugs of their names.
//
// Example: write_records(records)[2].name == "athletes.csv"
#pragma once

#include "values/record_set.h"

#include <string>
#include <vector>

namespace amentum {

struct RecordFile {
    std::string name; // "athletes.csv"
    std::string text;
};

std::vector<RecordFile> write_records(const RecordSet& records);

} // namespace amentum
