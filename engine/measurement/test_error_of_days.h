// How large is a test's error between days, judged from days repeated here, when the athletes also really change?
//
// A repeat after weeks holds error and real change together. They are told apart by how the difference grows with time:
//   Var(y_t - y_s) = day^2 + known_t + day^2 + known_s + drift |t - s| + trend (t - s)^2
//   Cov of two differences of gaps g and h = trend g h, and - (day^2 + known) when they share a day
// a level that wanders and rises or falls at a pace of the athlete's own, seen with error [DurbinKoopman2012, chapters 2
// and 3]. The day error is what is left at no time between (half the intercept of the variance against time). known: the
// part of a day's value that more trials would lower (trial_error^2 / n) and the method's own error. The likelihood of
// all differences of neighbouring days is exact (normal). Drift and trend are integrated out: 33 drifts from 0.03 to 10
// published errors a month, 7 trends from 0.03 to 3, each factor as likely as the next (proposal of this project, no
// source).
//   own estimate: highest likelihood; df = -(curvature against log day error) / 2, which is exact for a chi-squared
//   variance; interval as in test_error.h.
// Units: the test's; logarithms when the error grows with the value. Days in order, never twice (asserted). One series
// holds one athlete, test, side, rater and tool. Refusals: no own estimate (too_few_data) when there is no repeated
// day, or the likelihood is highest at 1/20 or 20 of the published error: these days cannot tell it from zero, or from
// real change; or it holds less than one degree of freedom.
// What it cannot tell: change that comes and goes between two days (it counts as error); spells of rising and falling
// that are neither a steady pace nor a wandering (they make the error look smaller).
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

// For pool_with_published; keeps its own copy of the days. `published` only sets the changes that are tried.
ErrorLikelihood likelihood_of_days(std::vector<DaySeries> series, double published);

Result<EstimatedError> estimate_error_of_days(const std::vector<DaySeries>& series, double published);

// Of one series' differences, up to a constant (differences / 2 x log 2 pi).
double log_likelihood_of_series(const DaySeries& series, double day_variance, double drift_a_day,
                                double trend_variance = 0); // of the change a day

int repeated_days(const std::vector<DaySeries>& series); // days beyond the first of each series

} // namespace amentum
