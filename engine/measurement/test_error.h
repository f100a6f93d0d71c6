// How large is a test's error between trials, judged from the repeats made in this gym?
//
//   x_ij = level of athlete and day i + what trial number j adds (learning) + error
//   error^2 = residual sum of squares / df,   df = values - rows - (trial numbers - 1)     [Hopkins2000]
// Rows may have different lengths: least squares. With `left_in` the trial numbers add nothing, error is the
// within-subject standard deviation and df = values - rows [BlandAltman1996error]: the rival definition, which counts
// learning as error. Two trials and no learning left in: the typical error, SD of the differences / sqrt(2).
//   interval  error sqrt(df / chi2(0.9, df)) to error sqrt(df / chi2(0.1, df)), central 80 %
//   settled when both limits are within a factor (proposal of this project: 1.25, that is 23 df)
// Units: the test's; for a test whose error grows with its value hand in logarithms: the error is then a fraction
// [BlandAltman1996log]. Rows of one value tell nothing and are passed over; at most 60 trials a row.
// Refusals (too_few_data): no two trials in any row, or no degree of freedom left.
// What it cannot tell: the error between days (test_error_of_days.h); whether the athletes took the trials seriously.
// Example: peak flow, 20 children x 4 [BlandAltman1996error]: within 21.46, learning removed 19.50, df 57
#pragma once

#include "values/interval.h"
#include "values/refusal.h"

#include <vector>

namespace amentum {

using RepeatTable =
    std::vector<std::vector<double>>; // a row each athlete's day and side; its trials in order

enum class Learning { removed, left_in };

struct EstimatedError {
    double error;   // a standard deviation
    double freedom; // degrees of freedom, as a chi-squared variance has them; not always whole
    Interval band;  // central 80 %
};
EstimatedError error_with_band(double error, double freedom);

struct ErrorOfTrials {
    EstimatedError error;
    int rows;                       // that were used
    int values;                     // in them
    std::vector<Estimate> learning; // what trial 2, 3, ... adds to trial 1; empty when left in
};
Result<ErrorOfTrials> estimate_error_of_trials(const RepeatTable& table, Learning = Learning::removed);

inline constexpr double settled_factor = 1.25; // proposal of this project, no source

// How many more degrees of freedom (a repeat pair brings one) until the interval is within `factor` each way.
int repeats_to_settle(double freedom, double factor = settled_factor);

} // namespace amentum
