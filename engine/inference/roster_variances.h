// How noisy is a test here, and how fast does its quality drift? Pooled over the roster, by maximum
// likelihood.
//
// Each result comes with its standard error from the published typical error; here a common factor k on
// those error variances and a common drift q (variance a day) are estimated together over all athletes: the
// sum of the restricted log-likelihoods of trajectory.h, plus a lognormal prior on k (median 1, SD of log k
// 0.5, that is the published error holds within a factor of about 1.6 in SD two times in three) and on q
// (median: two published error SDs over a year, SD of log q 1.5: wide enough that a few testers who
// gain much are believed). With few data the estimate falls back to
// the priors and so never lies on the zero boundary [ChungEtAl2013, the same purpose by a gamma penalty].
// Both priors are proposals of this project, no source.
// Search: coordinate golden sections on (log k, log q), deterministic, 1e-6 in log.
// What it cannot tell: errors that differ between athletes; a test whose error was published for other
// people.
#pragma once

#include "inference/trajectory.h"

#include <span>
#include <vector>

namespace amentum {

struct RosterVariances {
    double error_factor;   // k: multiply each result's error variance by it
    double drift;          // q, variance a day in the scale of the values
    double log_likelihood; // restricted, without the priors
    int athletes;          // with at least two test days
    int tests;
};

// One series an athlete; series with one value tell nothing here and are passed over.
RosterVariances estimate_roster_variances(std::span<const std::vector<DatedValue>> series);

// Without priors, for checks against other programs: maximum likelihood of (one error variance, drift) of one
// series.
struct SeriesVariances {
    double error;
    double drift;
    double log_likelihood;
};
SeriesVariances estimate_series_variances(std::span<const DatedValue> values);

} // namespace amentum
