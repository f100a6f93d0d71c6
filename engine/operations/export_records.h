// export_records: write everything kept as the files import_records reads; importing them gives the same store.
#pragma once

#include "operations/workplace.h"
#include "values/refusal.h"

#include <boost/describe/class.hpp>

#include <string>
#include <vector>

namespace amentum {

struct ExportRecordsRequest {};
BOOST_DESCRIBE_STRUCT(ExportRecordsRequest, (), ())

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
