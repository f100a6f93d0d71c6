// A block as a coach has it in a spreadsheet: one line an exercise of a session. Read with every fault by line and field, and
// written back in the same columns.
//
//   exercise, sets, reps         needed; the exercise by its key or name, and the nearest offered when it is neither
//   week, session                1 ...; or a date instead of the week
//   date or weekday              of the session; without either the sessions of a week are spread over it, as
//                                1: first day; 2: + day 4; 3: + 3, 5; 4: + 2, 4, 6; 5: + 2, 3, 5, 6 (our proposal)
//   order                        within the session; the order of the lines when left out
//   load                         load_lb or load_kg; total, as the lift counts it; load_words instead of it for a band
//   reps_in_reserve, intensity, rest_minutes, part, purpose, reason, overridden      may all be left out
// A line without a session number belongs to the session of its day. Left out: the part and purpose the catalogue says.
// First day: as given, else the Monday on or before what the earliest date says is week 1, else the day handed in.
// Refuses (as a problem of its line): what record_columns.h and parse_records.h refuse in any file; a line with neither week
// nor date; more than 16 weeks or 5 sessions a week. Text that is no CSV at all is the only refusal of the whole.
// What it cannot tell: whether loads can be made here, and whether the block is wise: equipment and guard_rails look.
//
// Example: "week,weekday,exercise,sets,reps,load_lb\n1,monday,Goblet squat\, one dumbbell,3,8,50\n" -> week 1, session 1.
#pragma once

#include "records/record_columns.h"
#include "records/reference_tables.h"
#include "values/block.h"
#include "values/kit.h"

#include <optional>
#include <string>
#include <vector>

namespace amentum {

struct BlockSheetLine {
    BlockLine line; // rest_minutes 0 unless rest_given; load_words empty unless given
    bool rest_given;
    int file_line;     // 1 ...
    std::string field; // the load's column as the file has it: "load_lb"
};

struct BlockSheet {
    std::vector<Refusal> problems; // all, in the order of the file; field "line 7, load_lb"
    Date start;
    int weeks;
    int sessions_per_week;
    std::vector<BlockSheetLine> lines; // by week, session, order
    std::vector<std::string> notes;    // what was left to this program
};

struct BlockSheetContext {
    const ReferenceTables& tables;
    std::optional<Date> start;
    Date otherwise; // the first day when neither start nor a date is given
};

const std::vector<RecordColumn>& block_sheet_columns();

Result<BlockSheet> parse_block_sheet(std::string_view text, const BlockSheetContext&);
// Loads in the unit given.
std::string write_block_sheet(const Block&, MassUnit);

} // namespace amentum
