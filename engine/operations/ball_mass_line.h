// ball_mass_line: how fast this thrower sends balls of several masses, and how steeply speed falls with mass.
//
// One line a day and a throw (measurement/ball_mass_line.h), from the held throws of that day. Refuses an unknown athlete,
// throw or day, and a day with fewer than three balls thrown twice or more: then it says what to throw next. Never
// advises a ball above 8 lb (common practice, no source).
#pragma once

#include "operations/shown.h"
#include "operations/workplace.h"
#include "values/refusal.h"

namespace amentum {

struct BallMassLineRequest {
    std::string athlete;
    std::optional<std::string> family; // left out: the throw with the latest line
    std::optional<std::string> date;   // left out: the latest day with a line
};
BOOST_DESCRIBE_STRUCT(BallMassLineRequest, (), (athlete, family, date))

struct ShownBall {
    double mass; // in mass_unit
    int throws;
    std::vector<double> speeds; // single throws, in the speed's unit, as measured
    ShownEstimate speed;        // their mean; the trials' error alone
    ShownEstimate on_line;      // the line there; the day's error left out
    ShownEstimate energy;       // J
    ShownEstimate momentum;     // N s
    double of_lightest;         // its speed over the lightest ball's
    bool in_working_range;
    bool above_advised; // heavier than 8 lb
};
BOOST_DESCRIBE_STRUCT(ShownBall, (),
                      (mass, throws, speeds, speed, on_line, energy, momentum, of_lightest, in_working_range,
                       above_advised))

struct ShownLinePoint { // of a curve with its 80 % band
    double x;
    double value;
    double low;
    double high;
};
BOOST_DESCRIBE_STRUCT(ShownLinePoint, (), (x, value, low, high))

struct BallLineDay {
    std::string date;
    int balls;
    std::optional<ShownEstimate> slope; // null: no line that day
    std::optional<ShownEstimate> level; // at that day's own reference mass
    double reference_mass;
    std::string why_not; // empty when there is a line
};
BOOST_DESCRIBE_STRUCT(BallLineDay, (), (date, balls, slope, level, reference_mass, why_not))

struct BallMassLineAnswer {
    std::string athlete;
    std::string name;
    std::string family;
    std::string family_name;
    std::string date;
    std::string taken; // how the speeds were read
    std::string mass_unit;
    std::string speed_unit;
    double reference_mass; // the middle of the masses thrown
    ShownEstimate level;   // speed there, with the day's error
    ShownEstimate slope;   // power of mass
    std::string goes_with; // strength, limb_speed, cannot_tell
    std::vector<ShownBall> balls;
    std::vector<ShownLinePoint> curve; // x in mass_unit, between the lightest and the heaviest ball thrown
    std::vector<BallLineDay> days;     // every day of this throw
    std::vector<std::string> families; // throws this athlete has been tested in with a ball
    std::vector<std::string> words;
    std::vector<std::string> cautions;
    std::vector<std::string> throw_next;
    std::vector<std::string> sources;
};
BOOST_DESCRIBE_STRUCT(BallMassLineAnswer, (),
                      (athlete, name, family, family_name, date, taken, mass_unit, speed_unit, reference_mass,
                       level, slope, goes_with, balls, curve, days, families, words, cautions, throw_next,
                       sources))

Result<BallMassLineAnswer> ball_mass_line(Workplace&, const BallMassLineRequest&);

} // namespace amentum
