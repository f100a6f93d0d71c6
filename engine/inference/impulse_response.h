// What a model with one lasting and one passing effect of each day's training says of the level on a day. A calculation
// to ask for, and nothing more: no operation of this program uses it, and no load may be chosen by it.
//
//   p(t) = p0 + k1 sum_{s < t} e^-(t - s)/tau1 w_s - k2 sum_{s < t} e^-(t - s)/tau2 w_s          [Banister1975]
//   by recursion: lasting(t + 1) = (lasting(t) + w_t) e^-1/tau1, passing likewise with tau2
//   after one day's training the level is back where it was after   t_n = tau1 tau2/(tau1 - tau2) ln(k2/k1) days
//   and highest after                                     t_g = tau1 tau2/(tau1 - tau2) ln(k2 tau1/(k1 tau2)) days
// How well tests could tell the five numbers: standard errors by Fisher's information, J'J / error^2 inverted, where row i
// of J has the derivatives of p(t_i) by p0, k1, k2, tau1, tau2. It is the best that any unbiased fit could do.
// Units: load in any unit a day, level in the test's, k in test units a unit of load, tau in days.
// Days: loads[s] is done on day s, the first being day 0; p(t) is the level before the training of day t.
// Refusals: errors_of_a_fit when the tests cannot tell the five numbers at all (fewer than 5, or J'J without inverse).
// What it cannot tell: whether training acts like this. At the number of tests a gym makes the five numbers cannot be
// found: 12 tests in 180 days leave errors larger than the numbers themselves, and published fits are as wide [Hellard2006].
// Example: 100 a day for 60 days, p0 500, k 1 and 2, tau 45 and 15: p(30) 156.90, p(76) 1816.42; t_n 15.60, t_g 40.31 days
#pragma once

#include "values/refusal.h"

#include <array>
#include <optional>
#include <span>

namespace amentum {

struct ImpulseResponse {
    double start;        // p0
    double lasting_gain; // k1
    double passing_gain; // k2
    double lasting_days; // tau1, above tau2
    double passing_days; // tau2, above 0
};

// Contract: 0 < passing_days < lasting_days; day not negative.
double level_on_day(const ImpulseResponse& response, std::span<const double> loads, int day);

// Days until one day's training no longer lowers the level, and until its gain is greatest; none where the passing effect
// is never the larger one.
std::optional<double> days_to_recover(const ImpulseResponse& response);
std::optional<double> days_to_best(const ImpulseResponse& response);

// Of start, lasting_gain, passing_gain, lasting_days, passing_days.
struct FitErrors {
    std::array<double, 5> standard_error;
    double correlation_of_gains;
};
Result<FitErrors> errors_of_a_fit(const ImpulseResponse& response, std::span<const double> loads,
                                  std::span<const int> test_days, double test_error);

} // namespace amentum
