// How large is a test's error between days, judged from days repeated here, when the athletes also really change?
//
// A repeat after weeks holds error and real change together. They are told apart by how the difference grows with time:
//   Var(y_t - y_s) = day^2 + known_t + day^2 + known_s + drift |t - s|,   Cov of two differences that share a day =
//   -(day^2 + known)                                              a level that wanders, seen with error
//   [DurbinKoopman2012, chapter 2]
// so the day error is what is left at no time between (half the intercept of the variance against time). known: the
// part of a day's value that more trials would lower (trial_error^2 / n) and the method's own error. The likelihood of
// all differences of neighbouring days is exact (normal); drift is integrated out over 25 values from 0.03 to 10 day
// errors a month, each factor as likely as the next (proposal of this project, no source).
//   own estimate: highest likelihood; df = -(curvature against log day error) / 2, which is exact for a chi-squared
//   variance; interval as in test_error.h.
// Units: the test's; logarithms when the error grows with the value. Days in order, never twice (asserted). One series
// holds one athlete, test, side, rater and tool. Refusals: no own estimate (too_few_data) when there is no repeated
// day, or the likelihood is highest at 1/20 or 20 of the published error: these days cannot tell it from zero, or from
// real change; or it holds less than one degree of freedom.
// What it cannot tell: a wandering level from a straight rise; people who change much from one week to the next.
// Example: one athlete each, 100 pairs of days a week apart, differences of SD 2.83 -> day error near 2
#pragma once

#include "measurement/test_error_pooled.h"

namespace amentum {

struct DayOfSeries {
    int day;
    double value;
    double known_variance; // trial_error^2 / n and the method's own
};
using DaySeries = std::vector<DayOfSeries>;

// For pool_with_published; keeps its own copy of the days. `published` only sets the drifts that are tried.
ErrorLikelihood likelihood_of_days(std::vector<DaySeries> series, double published);

Result<EstimatedError> estimate_error_of_days(const std::vector<DaySeries>& series, double published);

// Of one series' differences, up to a constant (differences / 2 x log 2 pi).
double log_likelihood_of_series(const DaySeries& series, double day_variance, double drift_a_day);

int repeated_days(const std::vector<DaySeries>& series); // days beyond the first of each series

} // namespace amentum
