// export_records: write everything kept as the files import_records reads; importing them gives the same store.
//
// Force traces come only when asked for, because each may be a megabyte: an index and a file a trace, which record_trace
// reads back to the same samples and the same numbers.
#pragma once

#include "operations/workplace.h"
#include "values/refusal.h"

#include <boost/describe/class.hpp>

#include <optional>
#include <string>
#include <vector>

namespace amentum {

struct ExportRecordsRequest {
    std::optional<bool> traces; // true: the force traces too, each as a file of its own
};
BOOST_DESCRIBE_STRUCT(ExportRecordsRequest, (), (traces))

struct ExportedFile {
    std::string name;
    std::string kind;
    std::string text;
};
BOOST_DESCRIBE_STRUCT(ExportedFile, (), (name, kind, text))

struct ExportRecordsAnswer {
    std::vector<ExportedFile> files; // in the order in which they can be imported
};
BOOST_DESCRIBE_STRUCT(ExportRecordsAnswer, (), (files))

Result<ExportRecordsAnswer> export_records(Workplace&, const ExportRecordsRequest&);

} // namespace amentum
