// The repeats this gym holds of one test kind, and what they say of its error, on the kind's own scale (logarithms when
// the error grows with the value).
//
// Trials: readings of one athlete, day, test and side that together made a result. Lifts have none: the sets before the
// best are a warm-up, not repeats of it. Days: results of one athlete, test, side, tool and rater; logged sets are no
// tests and are left out. A day's known error is its trials' part alone: an equation's own error, where there is one,
// stays in the error between days, because another set may meet it with another sign.
#pragma once

#include "measurement/test_error_of_days.h"
#include "operations/inside/facility_view.h"

#include <optional>

namespace amentum {

struct RepeatsHere {
    RepeatTable trials;
    std::vector<DaySeries> days; // known variance from `trial` below
    double usual_trials;         // median of the trials a day; 1 when there are none
    std::optional<ErrorOfTrials> own_trial;
    PooledError trial; // the published one for lifts
    std::optional<EstimatedError> own_day;
    PooledError day;
};
RepeatsHere repeats_here(const FacilityView&, const TestKind&);

bool has_repeated_trials(const TestKind&); // no for lifts
double error_of_day(const RepeatsHere&);   // day and trials together, at the usual number of trials

} // namespace amentum
