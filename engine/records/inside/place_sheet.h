// Rows of a coach's block to sessions on days: week from the date or given, day from date, weekday or spread over the week.
#pragma once

#include "records/block_sheet.h"
#include "records/inside/line_reader.h"

namespace amentum {

struct SheetRow {
    std::optional<int> week, session, order;
    std::optional<Date> date;
    std::optional<int> weekday; // 1 Monday ... 7 Sunday
    BlockSheetLine line;        // week, session, date and order still to be set
};

BlockSheet place_sheet(std::vector<SheetRow> rows, const BlockSheetContext& context);

} // namespace amentum
