// judge_change: did this quality really change between two days, more than noise, and more than growth or the season?
//
// A test the roster's joint model holds (inside/roster_model.h), velocity among them, is judged by where that model says the
// athlete stood on the two days, so that no two screens disagree; any other by this test alone. `from` says which, and why.
// Readings far from what was expected are named; none is dropped.
// Refuses an unknown athlete or test, fewer than two test days, and a second day before the first.
#pragma once

#include "operations/shown.h"
#include "operations/workplace.h"
#include "values/refusal.h"

namespace amentum {

struct JudgeChangeRequest {
    std::string athlete;
    std::string test;                     // test kind's key
    std::optional<std::string> from_date; // left out: the first test day
    std::optional<std::string> to_date;   // left out: the last test day
};
BOOST_DESCRIBE_STRUCT(JudgeChangeRequest, (), (athlete, test, from_date, to_date))

struct SurprisingTest { // far from what all earlier readings foretold
    std::string date;
    double value;
    ShownEstimate forecast; // of such a test, 80 %
    std::string words;
};
BOOST_DESCRIBE_STRUCT(SurprisingTest, (), (date, value, forecast, words))

struct JudgeChangeAnswer {
    std::string athlete;
    std::string test;
    std::string test_name;
    std::string from_date;
    std::string to_date;
    double measured;      // difference of the two days' results as measured
    ShownEstimate likely; // the true change, given all of this athlete's tests and the roster's usual change
    double smallest_worthwhile;
    double chance_gained; // P(true change > smallest worthwhile)
    double chance_lost;
    double smallest_detectable;          // MDC95 of two such tests
    std::optional<ShownEstimate> growth; // below 18: what growth alone would bring
    std::string from;                    // joint model, this test alone
    std::string from_words;              // why
    std::vector<SurprisingTest> surprises;
    std::string verdict; // gained, lost, cannot_tell
    std::vector<std::string> words;
};
BOOST_DESCRIBE_STRUCT(JudgeChangeAnswer, (),
                      (athlete, test, test_name, from_date, to_date, measured, likely, smallest_worthwhile,
                       chance_gained, chance_lost, smallest_detectable, growth, from, from_words, surprises,
                       verdict, words))

Result<JudgeChangeAnswer> judge_change(Workplace&, const JudgeChangeRequest&);

} // namespace amentum
