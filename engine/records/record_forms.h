// The form of each kind of record: how a line is read, what identifies it, how it is written, how it is said.
//
// Two records are the same when their written lines are the same: shortest decimals make that exact.
#pragma once

#include "records/record_kind.h"
#include "records/reference_tables.h"
#include "records/row_reader.h"
#include "values/record_set.h"

#include <map>
#include <string>
#include <vector>

namespace amentum {

// Names for ids, so that files name people and gyms and not ids.
struct NamesInUse {
    std::map<std::string, std::string> athletes;  // id -> name
    std::map<std::string, std::string> kits;
    explicit NamesInUse(const RecordSet&);
};

struct FormContext {
    const ReferenceTables& tables;
    const RecordSet& held;
    Date today;
    NamesInUse names;
};

using Cells = std::vector<std::string>;

// One line's worth of a kit or a block.
struct KitLine {
    std::string kit;
    MassUnit unit;
    KitItem item;
};
struct LineOfBlock {
    BlockId block;
    BlockLine line;
};

std::vector<std::string> written_columns(RecordKind);   // as this program writes them
std::vector<std::string> readable_columns(RecordKind);  // every name a column may have
std::vector<std::string> needed_columns(RecordKind);    // without which no line can be read

Facility read_facility(RowReader&);
KitLine read_kit_line(RowReader&);
Athlete read_athlete(RowReader&, const FormContext&);
Reading read_reading(RowReader&, const FormContext&);
ThrowEntry read_throws(RowReader&, const FormContext&);
CalendarEntry read_calendar(RowReader&, const FormContext&);
Block read_block(RowReader&, const FormContext&);
LineOfBlock read_block_line(RowReader&, const FormContext&);
SetDone read_set(RowReader&, const FormContext&);
Override read_override(RowReader&, const FormContext&);

Cells cells_of(const Facility&, const NamesInUse&);
Cells cells_of(const KitLine&, const NamesInUse&);
Cells cells_of(const Athlete&, const NamesInUse&);
Cells cells_of(const Reading&, const NamesInUse&);
Cells cells_of(const ThrowEntry&, const NamesInUse&);
Cells cells_of(const CalendarEntry&, const NamesInUse&);
Cells cells_of(const Block&, const NamesInUse&);
Cells cells_of(const LineOfBlock&, const NamesInUse&);
Cells cells_of(const SetDone&, const NamesInUse&);
Cells cells_of(const Override&, const NamesInUse&);

// How many of the written cells identify the record (they stand first), and its name in a sentence.
std::size_t key_cells(RecordKind);
std::string noun_of(RecordKind);

}  // namespace amentum
