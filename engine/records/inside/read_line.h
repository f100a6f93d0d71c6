// One line -> one record, or the line's first refusal; one function for each kind.
#pragma once

#include "records/inside/cells.h"
#include "records/inside/line_reader.h"
#include "records/parse_records.h"

#include <map>

namespace amentum {

// What is known while a file's lines are read one after the other.
struct LinesBefore {
    const ImportContext& context;
    const FileLayout& layout;
    NamesOf names;                              // of athletes and kits held
    std::map<std::string, int> trials = {};     // the highest trial so far of an athlete, day, test and side
    std::map<std::string, MassUnit> units = {}; // of the kits in this file
};

RecordOnLine read_facility(LineReader&, LinesBefore&);
RecordOnLine read_item(LineReader&, LinesBefore&);
RecordOnLine read_athlete(LineReader&, LinesBefore&);
RecordOnLine read_reading(LineReader&, LinesBefore&);
RecordOnLine read_throws(LineReader&, LinesBefore&);
RecordOnLine read_calendar(LineReader&, LinesBefore&);
RecordOnLine read_block(LineReader&, LinesBefore&);
RecordOnLine read_block_line(LineReader&, LinesBefore&);
RecordOnLine read_set(LineReader&, LinesBefore&);
RecordOnLine read_override(LineReader&, LinesBefore&);

// Steps that several kinds share.
AthleteId read_athlete_name(LineReader&, const LinesBefore&);
KitId read_kit_name(LineReader&, const LinesBefore&);
Date read_day_lived(LineReader&, const LinesBefore&,
                    const AthleteId&);                      // "date", not after today, not before birth
std::string read_exercise(LineReader&, const LinesBefore&); // its key
std::vector<std::string> read_cautions(LineReader&, const LinesBefore&, const char* column);

// "an athlete", "Ona Reyes, born 2008-05-11, ..."
struct LineWords {
    std::string noun, what;
};
LineWords describe_line(const RecordOnLine&, const LineReader&, const LinesBefore&);

} // namespace amentum
