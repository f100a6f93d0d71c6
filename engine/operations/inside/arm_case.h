// One arm as the answers about throwing need it: its entries, its days of pitching, its tables, its pains.
#pragma once

#include "operations/inside/inside.h"
#include "throwing_workload/arm_tables.h"
#include "throwing_workload/pitch_allowance.h"

namespace amentum {

struct ArmCase {
    const Athlete* athlete;
    std::vector<ThrowEntry> entries; // of this athlete
    std::vector<PitchingDay> days;
    std::vector<PitchRule> in_force;
    std::vector<TeamPlace> places;
    std::vector<PainEntry> pains;
    std::vector<PainEntry> pains_that_stop_throwing;
    std::vector<PainClearance> clearances;
    std::vector<ThrowSteps> steps;
    std::vector<StopAnswered> stops_answered;
    std::vector<CalendarEntry> calendar;

    std::vector<ArmTable> tables_on(Date day) const;
};

std::vector<PitchRule> pitch_rules_in_force(const ReferenceTables&, const FacilityView&);

ArmCase arm_case(const FacilityView&, const ReferenceTables&, const Athlete&);

// Of everybody, by athlete id, in one pass over the records.
std::map<std::string, ArmCase> arm_cases(const FacilityView&, const ReferenceTables&);

// Days of the calendar that leave no room for a session of throws: all but practice.
std::vector<Date> days_spoken_for(const ArmCase&);

std::string weekday_words(Date day); // "Thursday 2026-06-04"

} // namespace amentum
