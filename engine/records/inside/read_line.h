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
    int last_prior_edit = 0;                    // the highest number, of those held and those in this file
    std::map<std::string, int> numbers = {};    // the same of tables (of ""), of an athlete's pains or steps
    std::map<std::string, std::vector<ThrowEntry>> throws =
        {}; // of an athlete and day, held and in this file
    std::map<std::string, std::vector<std::string>> heads = {}; // of a record of several lines, in this file
    std::map<std::string, int> rows = {};                       // of it so far
};

LinesBefore lines_before(RecordKind, const ImportContext&, const FileLayout&);

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
RecordOnLine read_prior_edit(LineReader&, LinesBefore&);
RecordOnLine read_pitch_rule(LineReader&, LinesBefore&);
RecordOnLine read_team(LineReader&, LinesBefore&);
RecordOnLine read_pain(LineReader&, LinesBefore&);
RecordOnLine read_clearance(LineReader&, LinesBefore&);
RecordOnLine read_throw_step(LineReader&, LinesBefore&);
RecordOnLine read_stop_answered(LineReader&, LinesBefore&);

// Steps that several kinds share.
AthleteId read_athlete_name(LineReader&, const LinesBefore&);
KitId read_kit_name(LineReader&, const LinesBefore&);
Date read_day_lived(LineReader&, const LinesBefore&,
                    const AthleteId&);                      // "date", not after today, not before birth
std::string read_exercise(LineReader&, const LinesBefore&); // its key
std::vector<std::string> read_cautions(LineReader&, const LinesBefore&, const char* column);
std::string read_reason(LineReader&); // at least so long that it says something
// Numbers run without a gap within `of`: a file that begins in the middle has lost records.
int read_running_number(LineReader&, LinesBefore&, const std::string& of, const char* called);
Date read_day_recorded(LineReader&, const LinesBefore&, const char* column); // not after today
// A record of several lines, whose lines repeat its head: refuses another head than the lines above have, and rows beside a
// line that says there are none. How many rows there are with this one.
struct HeadOfLines {
    std::string key, called; // "table 3"
    std::vector<std::string> cells;
    bool has_row;
};
int check_head(LineReader&, LinesBefore&, const HeadOfLines&);

// "an athlete", "Ona Reyes, born 2008-05-11, ..."
struct LineWords {
    std::string noun, what;
};
LineWords describe_line(const RecordOnLine&, const LineReader&, const LinesBefore&);

} // namespace amentum
