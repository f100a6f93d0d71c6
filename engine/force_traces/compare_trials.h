// Do several trials of one effort agree, and what is their mean?
//
//   mean, and standard deviation between trials (n - 1), of each number all trials have
// Limits on the range (highest - lowest), for the number a test is about:
//   pull held still    highest force: 250 N [Haff2015, from memory]
//   jumps and bounds   3 sqrt(2) x 4 % of the mean: three standard errors of a difference, with the 4 % between trials of
//                      one day published for jump height [Pmc5377563]; the 3 is a proposal of this project
// Beyond it the trials disagree (609): repeat, do not average. Other numbers have no published limit and are not judged.
// Contract (asserted): at least one trial, all of one effort and legs.
// Refusals: fewer than two trials (too_few_data).
// What it cannot tell: which of two trials is the wrong one.
// Example: pulls of 2,000 and 2,300 N -> mean 2,150 N, disagreement
#pragma once

#include "force_traces/trace_measurement.h"
#include "values/refusal.h"

namespace amentum {

struct ComparedMetric {
    std::string key;
    std::string name;
    std::string unit;
    int decimals;
    double mean;
    double spread; // standard deviation between trials
    double range;
    bool judged; // a limit is known
    bool disagree;
    std::string words;
};

struct TrialComparison {
    std::vector<ComparedMetric> metrics;
    std::optional<Refusal> disagreement; // trials_disagree, with the first number beyond its limit
};

Result<TrialComparison> compare_trials(const std::vector<TraceMeasurement>& trials);

} // namespace amentum
