// Which fraction of the 1RM can be lifted n times? The textbook training-load chart.
//
//   n          1    2    3    4    5    6    7    8    9    10   12
//   fraction   1.00 0.95 0.93 0.90 0.87 0.85 0.83 0.80 0.77 0.75 0.70      [LoadChart]
// Straight lines between the printed counts (11 -> 0.725). The book's own table has 0.67 at 12 [Baechle2008]
// (from memory): the two published variants disagree there, ours is the chart.
// Valid: 1 <= n <= 12 (asserted). What it cannot tell: how far one lifter is from the chart.
// Example: chart_fraction(5) == 0.87
#pragma once

namespace amentum {

inline constexpr double most_chart_repetitions = 12;
double chart_fraction(double repetitions_to_failure);

} // namespace amentum
