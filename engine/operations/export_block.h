// export_block: a kept block as the file import_block reads: one line an exercise, loads in the gym's unit.
//
// Bringing it in again with the same first day, minutes and gym gives the same lines.
#pragma once

#include "operations/export_records.h"

namespace amentum {

struct ExportBlockRequest {
    std::string block; // its id, or an athlete's name for that athlete's newest block
};
BOOST_DESCRIBE_STRUCT(ExportBlockRequest, (), (block))

struct ExportBlockAnswer {
    std::string block;
    std::string start;
    double minutes;
    std::string kit;
    std::vector<ExportedFile> files; // one
};
BOOST_DESCRIBE_STRUCT(ExportBlockAnswer, (), (block, start, minutes, kit, files))

Result<ExportBlockAnswer> export_block(Workplace&, const ExportBlockRequest&);

} // namespace amentum
