// roster: every thrower on one line: velocity with its band, what seems to hold it back, and what to do next.
#pragma once

#include "operations/shown.h"
#include "operations/workplace.h"
#include "values/refusal.h"

namespace amentum {

struct RosterRequest {};
BOOST_DESCRIBE_STRUCT(RosterRequest, (), ())

struct RosterLine {
    std::string athlete;
    std::string name;
    std::string sport;
    std::string role;
    std::string level;
    int age;
    std::optional<ShownEstimate> velocity;  // now; absent without a velocity test
    std::vector<ShownPoint> velocity_curve; // at the test days and today
    std::vector<ShownTest> velocity_tests;
    std::optional<std::string> limiter;   // quality, in words; absent when the records cannot tell
    std::optional<double> limiter_chance; // that it is the best lever, 0 to 1
    std::string limiter_words;            // "Single-leg strength (71 %)" or "cannot tell; test pull-ups next"
    std::optional<int> days_since_hard_throw;
    std::string hard_throw_words;
    std::string next_step;
};
BOOST_DESCRIBE_STRUCT(RosterLine, (),
                      (athlete, name, sport, role, level, age, velocity, velocity_curve, velocity_tests,
                       limiter, limiter_chance, limiter_words, days_since_hard_throw, hard_throw_words,
                       next_step))

struct RosterAnswer {
    std::string facility;
    std::string today;
    std::string mass_unit;
    std::string speed_unit;
    std::string length_unit;
    std::vector<RosterLine> throwers;
};
BOOST_DESCRIBE_STRUCT(RosterAnswer, (), (facility, today, mass_unit, speed_unit, length_unit, throwers))

Result<RosterAnswer> roster(Workplace&, const RosterRequest&);

} // namespace amentum
