// One day of joint angles as it is shown: angles, totals, differences, what is missing. The athlete's other days only
// tell on how many of them a deficit was seen.
#pragma once

#include "operations/inside/inside.h"
#include "operations/inside/sides_of_day.h"
#include "operations/joint_ranges.h"

namespace amentum {

struct AngleDays { // all days of one angle, earliest first
    const TestKind* kind;
    std::vector<SidesOfDay> days;
};
// Of the angles that stand for a range; those that only serve a posture (ankle_dorsiflexion) are left to solve_setup.
std::vector<AngleDays> angles_of(const Workplace::Inside&, const FacilityView&, const Athlete&);
JointDay joint_day(const std::vector<AngleDays>& angles, Date date);

} // namespace amentum
