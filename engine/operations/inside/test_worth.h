// What one more day of each test is worth for the choice of what to train: find_limiters and next_test ask here, so that they agree.
//
// Kept beside limiter_work.h: its levels, its expected gains; the test of a quality is the one that speaks for this athlete, else
// the one most throwers here have done. A gain's slope on its level is that of the headroom (limiters.h).
#pragma once

#include "inference/next_test.h"
#include "operations/inside/limiter_work.h"

#include <functional>

namespace amentum {

// Below this no single test is said to be worth doing for the choice, m/s (proposal of this project, no source).
inline constexpr double least_worth_of_test = 0.001;

struct TestWorth {
    std::string quality;
    const TestKind* kind;
    double value;        // m/s
    DoubtAtChoice doubt; // variances
    std::string nothing; // why it tells nothing; empty: it tells something
};

// Days from today of a test of this kind, none: no day; asked for each kind.
using DaysAhead = std::function<std::optional<int>(const TestKind&)>;

// Most worth first; then by the quality's key.
std::vector<TestWorth> worth_of_tests(const FacilityView&, const ReferenceTables&, const Athlete&,
                                      const LimiterWork&, Date today, int choice_in_days, const DaysAhead&);

} // namespace amentum
