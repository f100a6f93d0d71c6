// Everything a facility keeps, as one value: what an import brings, what an export writes, what a store holds.
//
// Order inside each list is the order of its identity (athlete, date, ...), so that equal stores are equal values.
#pragma once

#include "values/arm_care.h"
#include "values/athlete.h"
#include "values/block.h"
#include "values/facility.h"
#include "values/kit.h"
#include "values/pitch_table.h"
#include "values/prior_edit.h"
#include "values/reading.h"
#include "values/season.h"

#include <optional>
#include <vector>

namespace amentum {

struct RecordSet {
    std::optional<Facility> facility;
    std::vector<Kit> kits;
    std::vector<Athlete> athletes;
    std::vector<Reading> readings;
    std::vector<ThrowEntry> throws;
    std::vector<CalendarEntry> calendar;
    std::vector<Block> blocks;
    std::vector<SetDone> sets;
    std::vector<Override> overrides;
    std::vector<PriorEdit> prior_edits;
    std::vector<TeamPlace> teams;
    std::vector<PitchTable> pitch_tables;
    std::vector<PainEntry> pains;
    std::vector<PainClearance> clearances;
    std::vector<ThrowSteps> throw_steps;
    std::vector<StopAnswered> stops_answered;

    friend bool operator==(const RecordSet&, const RecordSet&) = default;
};

} // namespace amentum
