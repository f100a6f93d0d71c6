// Do the trials of one test agree, and what do they say together?
//
//   mean, SD between trials (n - 1), and range (highest minus lowest) of every number that all trials have
// A number disagrees when its range is wider than its method allows:
//   peak force of a pull           250 N [Comfort2019], from memory
//   a number with a published error between days   3 times that error times the mean: three trials of one day spread by
//                                  1.7 of its SD on the mean, so 3 is rare; a proposal of this project
// Each disagreement is a Refusal value (trials_disagree) whose sentence says what to do; means stand beside it, for the
// coach may know why (a slipped foot) and leave that trial out.
// Refusals: fewer than two trials (too_few_data); trials of different tests or legs (method_does_not_apply).
// What it cannot tell: which of the trials is wrong; whether the athlete has changed since another day.
// Example: pulls of 2400, 2450 and 2710 N -> range 310 N, disagrees, pull again
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
    double spread; // SD between trials
    double range;
    std::optional<double> allowed_range; // none when no method says
    bool agrees;                         // true also when none says
};

struct TrialComparison {
    std::size_t trials;
    std::vector<ComparedMetric> metrics; // in the order of the first trial
    std::vector<Refusal> disagreements;
};

Result<TrialComparison> compare_trials(const std::vector<TraceMeasurement>& trials);

} // namespace amentum
