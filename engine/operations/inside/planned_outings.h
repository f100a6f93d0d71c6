// What every planned game does to the days around it: asked in order, each start ahead as if thrown with the usual count.
//
// Usual: the mean of the thrower's last five days of pitching within 60 days; without those, the table's daily maximum.
// Starts count as outings of whoever pitches; other games only stand there.
#pragma once

#include "operations/check_arm.h"
#include "operations/inside/arm_case.h"

namespace amentum {

std::vector<PlannedOuting> planned_outings(const ArmCase&, const ReferenceTables&, Date today);

// Every planned start and step ahead, looked at by the guard rails; what was looked at goes to `checked`.
std::vector<ShownFinding> planned_throwing_findings(const Workplace::Inside&, const FacilityView&,
                                                    const Athlete&, Date today,
                                                    std::vector<std::string>& checked);

// Calendar words of a day: "start", "game; travel"; empty.
std::string planned_on(const ArmCase&, Date day);

} // namespace amentum
