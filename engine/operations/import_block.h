// import_block: a block the coach already has, from a file: shown as sheets, checked by the guard rails and priced like a planned
// one; kept when told to, whole or not at all.
//
// Columns: records/block_sheet.h (docs/guide/import_block.md). Every fault is listed by line and column, and with one fault
// nothing else is answered. A load within 2 % of one this gym makes is taken as that, and the notes say so; one farther off
// is a fault, with the loads next to it.
// keep = true keeps the block unless a guard rail stops it. A block of the same thrower and first day is replaced while
// none of its sets is logged, as planning again would.
// Refuses: an unknown thrower or kit, minutes out of range, a text that is no CSV; (already_held) sets logged against the
// block it would replace.
// What it cannot tell: whether the loads suit the thrower; that is why the guard rails and the points stand beside it.
#pragma once

#include "operations/plan_block.h"

namespace amentum {

struct ImportBlockRequest {
    std::string athlete;
    std::string text; // the file's content
    std::optional<std::string>
        start;                     // first day of week 1; left out: from the file's dates, or the next Monday
    std::optional<double> minutes; // a session, 20 to 120; left out: 60
    std::optional<std::string> kit; // left out: where the athlete trains
    std::optional<bool> keep;       // left out: no
};
BOOST_DESCRIBE_STRUCT(ImportBlockRequest, (), (athlete, text, start, minutes, kit, keep))

struct ImportBlockAnswer {
    bool kept;
    bool can_be_kept; // no problem, and no guard rail stops it
    std::string words;
    std::vector<ShownRefusal> problems; // by line and column: "line 7, load_lb"
    std::optional<BlockAnswer> block;   // null while there are problems
};
BOOST_DESCRIBE_STRUCT(ImportBlockAnswer, (), (kept, can_be_kept, words, problems, block))

Result<ImportBlockAnswer> import_block(Workplace&, const ImportBlockRequest&);

} // namespace amentum
