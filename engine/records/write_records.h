// Everything kept, as the files that parse_records reads: SI units, shortest decimals, the order of identity.
//
// Reading the files back, in import_order(), into an empty store gives an identical store; writing that store gives
// the same bytes.
#pragma once

#include "values/record_set.h"

#include <string>
#include <vector>

namespace amentum {

struct RecordFile {
    std::string name;  // "test_results.csv": the kind and .csv
    std::string text;
};

std::vector<RecordFile> write_records(const RecordSet& records);

}  // namespace amentum
