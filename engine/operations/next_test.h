// next_test: which test, on which day, would shrink the doubt about what to train most?
//
// For each quality that may hold velocity back: what one day of its test is worth before it is done, in velocity (next_test.h of
// inference): the gain lost on average by choosing without it. The test's own error, what is not known of the level, what is
// usual, and drift up to the day of choice are in it. The day: the last one before `before` that the calendar and the arm
// leave free, because a later test says more of that day. Not on a game, start, day off or travel; tests to the limit also not
// within 48 h of a start, nor the day after one, nor while pitch rules ask for rest (common practice, no source).
// Refuses an unknown athlete, and a `before` that is not after today or more than half a year away.
// What it cannot tell: the minutes a test takes; what several tests together would add; slopes, which are the larger doubt and
// get sharper only by more test days of all throwers.
#pragma once

#include "operations/shown.h"
#include "operations/workplace.h"
#include "values/refusal.h"

namespace amentum {

struct NextTestRequest {
    std::string athlete;
    std::optional<std::string>
        before; // day of choice; left out: the next kept block's start, or four weeks from today
};
BOOST_DESCRIBE_STRUCT(NextTestRequest, (), (athlete, before))

struct PassedOver {
    std::string date;
    std::string why;
};
BOOST_DESCRIBE_STRUCT(PassedOver, (), (date, why))

struct TestChoice {
    std::string test; // key
    std::string test_name;
    std::string quality;
    std::string quality_name;
    double value;         // of velocity, in `unit`: expected gain lost by choosing without it
    double doubt_without; // SD of the level on the day of choice, in SDs between athletes
    double doubt_with;
    std::string last_date;               // last tested; empty: never
    std::string date;                    // when to test; empty: no day is free
    std::vector<PassedOver> passed_over; // later days, and why not
    std::string words;
};
BOOST_DESCRIBE_STRUCT(TestChoice, (),
                      (test, test_name, quality, quality_name, value, doubt_without, doubt_with, last_date,
                       date, passed_over, words))

struct NextTestAnswer {
    std::string athlete;
    std::string name;
    std::string today;
    std::string before;
    std::string before_words;      // where that day comes from
    std::string best;              // test key; empty: no single test is worth it
    std::string unit;              // of value
    std::vector<TestChoice> tests; // most worth first
    std::vector<std::string> words;
    std::vector<std::string> cautions;
    std::string model;
    std::vector<std::string> sources;
};
BOOST_DESCRIBE_STRUCT(NextTestAnswer, (),
                      (athlete, name, today, before, before_words, best, unit, tests, words, cautions, model,
                       sources))

Result<NextTestAnswer> next_test(Workplace&, const NextTestRequest&);

} // namespace amentum
