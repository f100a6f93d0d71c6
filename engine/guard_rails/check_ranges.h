// Did range or strength of the throwing shoulder drop by more than the error of the test?
//
// Watched, of the throwing arm: total rotation (outward + inward of one day, joint_range.h), flexion lying, and the force of
// outward rotation for body mass (rotation_force.h; the body mass nearest in date, at most 31 days away).
// Each measured day is set beside the mean of the thrower's own earlier days of the 365 before it, two days at least:
//   drop   = mean of the earlier days - the day
//   error  = 1.645 sqrt(SE_day^2 + SE_earlier^2), SE_earlier the largest of the earlier days', as if there were one of them:
//            the difference of two days that error alone exceeds one time in twenty downward [Weir2005]. No more earlier
//            days make it smaller (proposal of this project): a mean can be of the wrong year, rater or position.
//   like with like: earlier days of the same noted rater and device, where there are two of them; otherwise all of them, and the
//            error is at least the published one between raters, MDC90: flexion 8, total rotation sqrt(8^2 + 9^2) = 12 degrees
//            [Kolber2011]. Force has no published one between raters or devices: there it cannot tell.
//   angles   never less than 5 degrees: published cut-offs of 5 [Wilk2011] lie inside the error, and a difference of 5
//            degrees alone is never a finding
// A drop > error on a measured day warns `re_measure`; on the measured day after it as well, `show_clinician`, and so on until a
// day is back within the error. Days of a lasting drop do not enter the mean they are compared with; a single one that was
// not seen again does. That rule is a proposal of this project, no source.
// Units: degrees; N/kg. Range: results of any athletes and tests, in any order; those after `today` are left out.
// What it cannot tell: injury, now or later; studies of range and injury contradict each other [Keller2018; Bullock2018]. A
// rise; whether the position was the same. No finding does not mean that the shoulder is sound.
//
// Example: total rotation 182, 180, 184 degrees in spring, 168 in June: 14 below their mean of 182, error 7.9: `re_measure`.
#pragma once

#include "guard_rails/finding.h"
#include "values/athlete.h"
#include "values/reading.h"

#include <span>
#include <string>
#include <vector>

namespace amentum {

struct RangeWatch {
    std::vector<Finding> findings;
    std::vector<std::string> words; // a sentence each: what stands beside what, or why it cannot tell
};

RangeWatch check_ranges(const Athlete& athlete, std::span<const TestResult> results, Date today);

} // namespace amentum
