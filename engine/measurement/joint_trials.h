// Do the trials of one angle agree, and is a side difference of range worth a second look?
//
//   mean of the n trials, SE^2 = day_error^2 + trial_error^2 / n
//   spread = largest - smallest; further apart than the error allows when
//       spread > q(n) trial_error,  q(n) the 95th percentile of the range of n standard normal readings
//       [Harter1960]; two trials: q = 1.96 sqrt(2) = 2.77. Then take one more, and look for a misreading.
//   total rotation = outward + inward, SE^2 = sum of both;  its side difference holds four angles: 2 SE of one angle
// A published cut-off (5 degrees of total rotation [Wilk2011], of flexion [Wilk2014]) lies inside the error of a single
// difference (four angles of 2.4 degrees: 4.8), and studies contradict each other [Keller2018; Bullock2018]. So:
//   show_clinician    deficit - 1.645 SE > cut-off, or a deficit above the cut-off on two days or more
//   measure_again     deficit > cut-off on one day
//   none_seen         otherwise; when deficit + 1.645 SE > cut-off the words say that it is not excluded either
// That rule is a proposal of this project. Units: degrees. Valid: errors above 0, 1 to 60 trials, cut-off 0 to 60.
// Refusals: outside that. Like with like only: joint_range.h refuses two raters, tools, places, days, athletes.
// What it cannot tell: injury, now or later. Throwers turn further outward and less inward because they throw.
// Example: 95 and 101 degrees, trial error 1.5: 6 apart, more than 4.2: take a third
#pragma once

#include "values/enum_words.h"
#include "values/interval.h"
#include "values/refusal.h"

#include <vector>

namespace amentum {

struct AngleTrials {
    Estimate mean;
    double spread;
    double spread_allowed; // 0 for one trial
    bool one_more;         // the trials are too far apart, or there is only one
};
Result<AngleTrials> measure_angle_trials(const std::vector<double>& degrees, double trial_error,
                                         double day_error);

// 95th percentile of the range of n independent standard normal readings; n 2 to 60 (asserted).
double usual_range_of(int n);

enum class RangeFinding { none_seen, measure_again, show_clinician };
template <>
inline constexpr std::array<std::pair<RangeFinding, std::string_view>, 3> words_of<RangeFinding>{
    {{RangeFinding::none_seen, "none_seen"},
     {RangeFinding::measure_again, "measure_again"},
     {RangeFinding::show_clinician, "show_clinician"}}};

// `days_found`: days, the present one counted, on which the deficit was above the cut-off.
Result<RangeFinding> judge_range_deficit(const Estimate& deficit, double cut_off, int days_found);

} // namespace amentum
