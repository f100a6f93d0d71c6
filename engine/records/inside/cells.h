// One record as the cells of its line, in SI, in the order of record_columns: for writing, and for comparing.
#pragma once

#include "records/record_kind.h"
#include "values/record_set.h"

#include <map>
#include <string>
#include <variant>
#include <vector>

namespace amentum {

// A kit's line holds one item, or none when it only says that the kit is there.
struct ItemOfKit {
    KitId kit;
    std::string kit_name;
    MassUnit unit;
    std::optional<KitItem> item;
};

struct LineOfBlock {
    BlockId block;
    BlockLine line;
};

// `table` has no rules, `steps` no steps: they are lines of their own, or none when there are none.
struct RowOfPitchTable {
    PitchTable table;
    std::optional<PitchRule> rule;
};

struct StepOfThrows {
    ThrowSteps steps;
    int place; // 1 ...; 0: there are none
    std::optional<ThrowStep> step;
};

// What one line of a file holds. A Block here has no lines: they are lines of another file.
using RecordOnLine = std::variant<Facility, ItemOfKit, Athlete, Reading, ThrowEntry, CalendarEntry, Block,
                                  LineOfBlock, SetDone, Override, PriorEdit, RowOfPitchTable, TeamPlace,
                                  PainEntry, PainClearance, StepOfThrows, StopAnswered>;

// Ids as the names that files say.
struct NamesOf {
    explicit NamesOf(const RecordSet& records);
    const std::string& athlete(const AthleteId& id) const;
    const std::string& kit(const KitId& id) const;

    std::map<std::string, std::string> athletes, kits;
};

std::vector<std::string> cells_of(const RecordOnLine& record, const NamesOf& names);

// All records of the kind that the set holds; a kit is told by a line of its own only when it has no items.
std::vector<RecordOnLine> records_on_lines(RecordKind kind, const RecordSet& records);

// The record's identity as one text; two records of a kind with the same are the same record.
std::string identity_of(RecordKind kind, const std::vector<std::string>& cells);

} // namespace amentum
