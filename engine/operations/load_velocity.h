// load_velocity: this lifter's own line of bar speed on load, and the maximum it leads to, with nothing lifted to failure.
//
// From loads and mean bar speeds given by hand, which are not kept, or, when none are given, from the held readings of
// that test that carry both (one day, one device). Refuses an unknown athlete or test, a test without a published minimal
// velocity, and what measurement/load_velocity.h refuses. Pull-ups: the line runs over body mass and added load together;
// added loads are given.
#pragma once

#include "operations/ball_mass_line.h"
#include "operations/shown.h"
#include "operations/workplace.h"
#include "values/refusal.h"

namespace amentum {

struct LoadGiven {
    std::optional<double> load_kg; // pull-ups: added load
    std::optional<double> load_lb;
    double speed_ms; // mean speed of the bar; a repetition as fast as possible
};
BOOST_DESCRIBE_STRUCT(LoadGiven, (), (load_kg, load_lb, speed_ms))

struct LoadVelocityRequest {
    std::string athlete;
    std::string test;
    std::vector<LoadGiven> loads;       // left out: the held readings with load and speed
    std::optional<std::string> date;    // of held readings; left out: the last day with two loads
    std::optional<double> body_mass_kg; // pull-ups; left out: the last one held
    std::optional<double> body_mass_lb;
};
BOOST_DESCRIBE_STRUCT(LoadVelocityRequest, (), (athlete, test, loads, date, body_mass_kg, body_mass_lb))

struct ShownLoadSpeed {
    double load;    // in load_unit
    double speed;   // m/s, of the fastest repetition with it
    double on_line; // m/s
    bool used;      // false: out of line, left out
};
BOOST_DESCRIBE_STRUCT(ShownLoadSpeed, (), (load, speed, on_line, used))

struct ShownMinimalVelocity {
    double speed;          // m/s
    double between_people; // standard deviation
    bool from_memory;
    std::vector<std::string> sources;
};
BOOST_DESCRIBE_STRUCT(ShownMinimalVelocity, (), (speed, between_people, from_memory, sources))

struct LoadVelocityAnswer {
    std::string athlete;
    std::string name;
    std::string test;
    std::string test_name;
    std::string date;  // empty: given by hand
    std::string taken; // "given by hand", "held, velocity meter 1"
    std::string load_unit;
    std::string load_means;                  // "load on the bar", "body mass and added load"
    ShownEstimate one_rep_max;               // in load_unit, of load_means
    std::optional<ShownEstimate> added_load; // pull-ups: the maximum without the body
    ShownMinimalVelocity minimal_velocity;
    std::vector<ShownLoadSpeed> loads; // lightest first
    std::vector<ShownLinePoint> curve; // x in load_unit, up to the maximum
    double heaviest_percent;           // heaviest load, of the maximum
    double r_squared;                  // no proof: near 1 whatever happens with three loads
    std::vector<std::string> words;
    std::vector<std::string> cautions;
    std::vector<std::string> sources;
};
BOOST_DESCRIBE_STRUCT(LoadVelocityAnswer, (),
                      (athlete, name, test, test_name, date, taken, load_unit, load_means, one_rep_max,
                       added_load, minimal_velocity, loads, curve, heaviest_percent, r_squared, words,
                       cautions, sources))

Result<LoadVelocityAnswer> load_velocity(Workplace&, const LoadVelocityRequest&);

} // namespace amentum
