// Which error of a test should be believed: the published one, this gym's own, or something between?
//
//   log error ~ N(log published, 0.5^2)   before the gym's repeats are seen: the published error holds within a factor
//                                         of 1.65 two times in three (proposal of this project, no source)
//   posterior of log error ~ prior x likelihood of the repeats, by integration on a grid
//   pooled = exp(mean of log error), interval = exp of its central 80 %
// Likelihood of repeats within a day with df degrees of freedom: log L = -df (log e + s^2 / (2 e^2)), a chi-squared
// variance. Without repeats the answer is the prior: the published error, from 0.53 to 1.90 of it. With many it is the
// gym's own.
// Units: the test's, or fractions. Refusals: published error not above 0.
// What it cannot tell: whether the gym's repeats were honest repeats (a second try after a poor first is not).
// Example: published 3 %, own 5 % with 40 df -> 4.9 %, 80 % interval 4.3 to 5.7
#pragma once

#include "measurement/test_error.h"

#include <functional>

namespace amentum {

inline constexpr double sd_of_log_published_error = 0.5; // proposal of this project, no source

// log likelihood of an error (up to a constant).
using ErrorLikelihood = std::function<double(double error)>;
ErrorLikelihood likelihood_of_repeats(const EstimatedError& own); // chi-squared; own.error 0 says nothing

struct PooledError {
    double error;
    Interval band;   // central 80 %
    double log_mean; // of log error
    double log_sd;   //
    double
        share_of_prior; // of the prior's variance that is left: 1 the published error, 0 all from the repeats
};
Result<PooledError> pool_with_published(double published, const ErrorLikelihood& repeats,
                                        double sd_of_log = sd_of_log_published_error);

} // namespace amentum
