// test_day: what a squad's test day needs on one tablet: who, which fields for each test, what was done last.
#pragma once

#include "operations/shown.h"
#include "operations/workplace.h"
#include "values/refusal.h"

namespace amentum {

struct TestDayRequest {
    std::optional<std::string> date; // left out: today
};
BOOST_DESCRIBE_STRUCT(TestDayRequest, (), (date))

struct TestField {
    std::string name;  // a field of TrialGiven in the facility's unit: load_lb, speed_mph, angle_deg
    std::string label; // "load"
    std::string unit;  // "lb"
    bool needed;
};
BOOST_DESCRIBE_STRUCT(TestField, (), (name, label, unit, needed))

struct TestOffered {
    std::string test;
    std::string name;
    std::string quality;
    std::string protocol;
    std::string side_rule; // none, lead_leg, throwing_arm
    std::vector<TestField> fields;
};
BOOST_DESCRIBE_STRUCT(TestOffered, (), (test, name, quality, protocol, side_rule, fields))

struct ExpectedResult {
    std::string test;
    ShownEstimate interval; // 99 % prediction for a new test on that day
    std::string last_date;
};
BOOST_DESCRIBE_STRUCT(ExpectedResult, (), (test, interval, last_date))

struct SquadLine {
    std::string athlete;
    std::string name;
    std::string sport;
    std::string throwing_hand;
    std::vector<ExpectedResult> expected;
    std::vector<std::string> done; // tests already held for that day
};
BOOST_DESCRIBE_STRUCT(SquadLine, (), (athlete, name, sport, throwing_hand, expected, done))

struct TestDayAnswer {
    std::string date;
    std::vector<TestOffered> tests;
    std::vector<SquadLine> squad;
};
BOOST_DESCRIBE_STRUCT(TestDayAnswer, (), (date, tests, squad))

Result<TestDayAnswer> test_day(Workplace&, const TestDayRequest&);

} // namespace amentum
