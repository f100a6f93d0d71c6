// Which difference is larger than the error of the test?
//
//   SEM   = SD sqrt(1 - ICC)                                          [Weir2005]
//   MDC95 = 1.96 sqrt(2) SEM,  MDC90 = 1.645 sqrt(2) SEM              [Weir2005]; z to full precision here
//   TE    = SD(second - first) / sqrt(2), typical error from repeats  [Hopkins2000]
//   E[max of n] - mean, in standard deviations, for independent normal readings: integral of n x phi(x)
//     Phi(x)^(n-1)
// SD between athletes, ICC the intraclass correlation of a retest. Units: those of the test; n 1 to 60.
// Refusals: ICC outside 0 to 1, SD or SEM negative, fewer than 2 pairs, lists of different length.
// What it cannot tell: whether the athletes of the published retest are like yours.
// Example: SD 20, ICC 0.97 -> SEM 3.4641, MDC95 9.6020
#pragma once

#include "values/refusal.h"

#include <vector>

namespace amentum {

Result<double> standard_error_of_measurement(double standard_deviation, double intraclass_correlation);
double smallest_detectable_change(double standard_error_of_measurement,
                                  double z); // z90 or z95 of values/interval.h
Result<double> typical_error(const std::vector<double>& first, const std::vector<double>& second);

// Why the best of n is never compared with a mean, nor with the best of another n.
double expected_maximum(int n);

} // namespace amentum
