// How do two sides differ, with what error? Angles of joints, and any other test done on two sides.
//
//   side difference      throwing - other,  SE^2 = SE_throwing^2 + SE_other^2
//   total rotation       ER + IR of one joint and side, SE^2 = SE_ER^2 + SE_IR^2; hips likewise
//   rotation deficit     (ER + IR) of the other arm - (ER + IR) of the throwing arm, SE^2 = sum of four
//   squares chance of a false flag: a deficit above the threshold is shown although the true deficit is d
//       P = 1 - Phi( (threshold - d) / (2 SEM) ),  four angles of one SEM each (closed form)
// ER, IR external and internal rotation at the shoulder. Errors taken as independent: on one day part of the
// day error is shared by the sides, so the stated error is on the large side.
// Units: degrees (or the test's). Refusals (method_does_not_apply): another rater, tool, place, day or
// athlete, or two results of one side: between raters the limits of agreement were 19 to 20 degrees
// [DeWinter2004], between tools the mean differed by 3 to 4 degrees at the hip [Roach2013].
// What it cannot tell: injury. Deficits of 5 degrees lie at or below the error of one measurement; a single
// one means "measure again", nothing else.
// Example: SEM 2.4 degrees an angle, true deficit 0: "more than 5 degrees" shows 14.9 % of the time
#pragma once

#include "values/interval.h"
#include "values/reading.h"
#include "values/refusal.h"

namespace amentum {

// Refuses two athletes, raters, tools, places or days.
Result<Done> check_taken_alike(const TestResult& a, const TestResult& b);

Result<Estimate> measure_side_difference(const TestResult& throwing, const TestResult& other);

struct ShoulderRotation {
    TestResult external;
    TestResult internal;
};
Result<Estimate> measure_total_rotation(const ShoulderRotation& one_side);
Result<Estimate> measure_rotation_deficit(const ShoulderRotation& throwing, const ShoulderRotation& other);

double chance_of_false_flag(double true_deficit, double threshold, double standard_error_of_one_angle);

} // namespace amentum
