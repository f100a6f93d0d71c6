// estimate_error: how large is each test's error here, by this gym's own repeats and the published errors together?
//
// Between trials and between days, each with what was published, this gym's own estimate, the pooled one, and how many
// more repeats would settle it. Refuses an unknown test. Without repeats the published errors stand, and it says so.
// The other answers go on using the published errors, times one common factor a test; this one shows what stands behind.
#pragma once

#include "operations/shown.h"
#include "operations/workplace.h"
#include "values/refusal.h"

namespace amentum {

struct EstimateErrorRequest {
    std::optional<std::string> test; // left out: every test kind
};
BOOST_DESCRIBE_STRUCT(EstimateErrorRequest, (), (test))

struct ErrorPart { // in the test's unit, or per cent where the error grows with the value
    double published;
    std::optional<ShownEstimate> own; // this gym's repeats alone; none when they cannot tell
    double degrees_of_freedom;        // behind it; 0 when there is none
    ShownEstimate pooled;
    int repeats_held;
    int repeats_needed; // more, until the gym's own estimate is settled
    std::string words;
};
BOOST_DESCRIBE_STRUCT(ErrorPart, (),
                      (published, own, degrees_of_freedom, pooled, repeats_held, repeats_needed, words))

struct ErrorLine {
    std::string test;
    std::string name;
    std::string unit;
    int decimals;
    ErrorPart trial;
    ErrorPart day;
    double usual_trials;                   // a day, the median
    std::optional<ShownEstimate> learning; // last trial less the first, where repeats tell
    double smallest_detectable;            // MDC95 of two such days, pooled errors
    double smallest_detectable_published;  // the same with the published ones
    std::vector<std::string> words;
    std::vector<std::string> sources;
};
BOOST_DESCRIBE_STRUCT(ErrorLine, (),
                      (test, name, unit, decimals, trial, day, usual_trials, learning, smallest_detectable,
                       smallest_detectable_published, words, sources))

struct EstimateErrorAnswer {
    std::vector<ErrorLine> tests;
    std::vector<std::string> words;
};
BOOST_DESCRIBE_STRUCT(EstimateErrorAnswer, (), (tests, words))

Result<EstimateErrorAnswer> estimate_error(Workplace&, const EstimateErrorRequest&);

} // namespace amentum
