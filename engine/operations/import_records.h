// import_records: take a file of the coach's, line by line; show first, take whole or not at all, never twice.
//
// Kinds: facility, kit, athletes, test_results, throws, calendar, sets, blocks, block_lines, overrides, prior_edits.
// The columns of each are docs/guide/import_records.md. Without take = true nothing is saved.
#pragma once

#include "operations/shown.h"
#include "operations/workplace.h"
#include "values/refusal.h"

namespace amentum {

struct ImportRecordsRequest {
    std::string kind;
    std::string text; // the file's content
    std::optional<bool> take;
};
BOOST_DESCRIBE_STRUCT(ImportRecordsRequest, (), (kind, text, take))

struct ImportLine {
    int line;
    std::string verdict; // new, already_held, refused
    std::string words;
    std::optional<ShownRefusal> refusal;
};
BOOST_DESCRIBE_STRUCT(ImportLine, (), (line, verdict, words, refusal))

struct ImportRecordsAnswer {
    std::string kind;
    bool taken;
    int new_records;
    int already_held;
    int refused;
    std::string words;
    std::vector<ImportLine> lines;
};
BOOST_DESCRIBE_STRUCT(ImportRecordsAnswer, (),
                      (kind, taken, new_records, already_held, refused, words, lines))

Result<ImportRecordsAnswer> import_records(Workplace&, const ImportRecordsRequest&);

} // namespace amentum
