// One series as a page draws it: test dots, the smoothed line with its 80 % band, today's value.
#pragma once

#include "operations/athlete_record.h"
#include "operations/inside/inside.h"

namespace amentum {

ShownTrajectory trajectory_answer(const Workplace::Inside&, const FacilityView&, const RosterModel&,
                                  const Athlete&, const Series&);
std::vector<ShownPoint> curve_of(const Series&, const Facility&, Date today);
std::vector<ShownTest> tests_of(const Series&, const Facility&);

} // namespace amentum
