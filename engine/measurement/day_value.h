// One day's value before it is a result: what the two ways of combining trials give (measure_test.h), and
// the last step, which all results share: the standard error, the plausible range, the sources.
#pragma once

#include "measurement/one_rep_max.h"
#include "values/reading.h"
#include "values/refusal.h"
#include "values/test_kind.h"

#include <string>
#include <vector>

namespace amentum {

struct DayValue {
    double value;        // in the test kind's unit
    double method_error; // standard error in that unit; not made smaller by repeating
    int trials;          // readings that were looked at
    int averaged;        // n of the standard error: 1 for a best set
    std::string method;
    std::vector<std::string> warnings;
    std::vector<std::string> sources; // of the method; the test kind's are added
};

Result<DayValue> measure_best_set(const TestKind& kind, const std::vector<Reading>& readings);
Result<DayValue> measure_mean_of_trials(const TestKind& kind, const std::vector<Reading>& readings);

// One set of a lift, as the test kind counts it; `reserve` is what the set left.
Result<OneRepMax> estimate_lift(const TestKind& kind, const Reading& reading, double reserve);
std::string describe_set(const TestKind& kind, int reps, double reserve);
std::vector<std::string> lift_sources(const TestKind& kind);

// Refuses a value outside kind.plausible_low to plausible_high, in words with both units; `field` is what to
//   check.
Result<Done> check_plausible(const TestKind& kind, double value, const std::string& field);

// `about` carries athlete, date, test, side, device, rater and place; the other members are filled in here.
Result<TestResult> state_result(const TestKind& kind, const DayValue& day, TestResult about);

// An expectation of the trial error alone, in the test's unit, at this value.
double in_test_unit(const TestKind& kind, double error, double value);

} // namespace amentum
