// A test kind: what is done, what it stands for, how it becomes a number, and how far that number can be trusted.
//
// The kinds are data (data/test_kinds.csv), each with the key of its source. A test's error grows with its value
// when scale is `logarithmic`; then errors are fractions (0.042 = 4.2 %), otherwise they are in the test's unit.
#pragma once

#include "values/enum_words.h"
#include "values/quantity.h"

#include <optional>
#include <string>
#include <vector>

namespace amentum {

// How raw readings become the test's value; the measurement module has one function for each.
enum class Measure {
    one_rep_max,      // load, reps, reps in reserve
    system_mass_max,  // added load, body mass, reps: pull-ups; value is the added load + body mass
    split_squat_max,  // external load only, reps, reps in reserve
    ball_speed,       // radar speed and angle, or distance and release height
    jump_height,      // flight time, or a height measured directly
    bound_distance,   // a distance
    joint_angle,      // trials of one angle, one rater, one tool
    isometric_force,  // trials of one force
    jump_power,       // trials of the highest power of a jump
    reactive_ratio,   // time in the air over time on the ground, of a rebound
    take_off_speed,   // trials of one speed of the body, from a force plate
    session_velocity, // throws of one session: mean of n
    body_mass,
    stature,
    taped_length, // of a part of the body, read as a height
};

template <>
inline constexpr std::array<std::pair<Measure, std::string_view>, 15> words_of<Measure>{
    {{Measure::one_rep_max, "one_rep_max"},
     {Measure::system_mass_max, "system_mass_max"},
     {Measure::split_squat_max, "split_squat_max"},
     {Measure::ball_speed, "ball_speed"},
     {Measure::jump_height, "jump_height"},
     {Measure::bound_distance, "bound_distance"},
     {Measure::joint_angle, "joint_angle"},
     {Measure::isometric_force, "isometric_force"},
     {Measure::jump_power, "jump_power"},
     {Measure::reactive_ratio, "reactive_ratio"},
     {Measure::take_off_speed, "take_off_speed"},
     {Measure::session_velocity, "session_velocity"},
     {Measure::body_mass, "body_mass"},
     {Measure::stature, "stature"},
     {Measure::taped_length, "taped_length"}}};

enum class Scale { linear, logarithmic };
template <>
inline constexpr std::array<std::pair<Scale, std::string_view>, 2> words_of<Scale>{
    {{Scale::linear, "linear"}, {Scale::logarithmic, "logarithmic"}}};

// Which side's readings feed the quality; the other side is kept and shown, but not mixed in.
enum class SideRule { none, lead_leg, throwing_arm };
template <>
inline constexpr std::array<std::pair<SideRule, std::string_view>, 3> words_of<SideRule>{
    {{SideRule::none, "none"}, {SideRule::lead_leg, "lead_leg"}, {SideRule::throwing_arm, "throwing_arm"}}};

enum class TestUnit { kilogram, metre, metre_per_second, degree, newton, watt, one };
template <>
inline constexpr std::array<std::pair<TestUnit, std::string_view>, 7> words_of<TestUnit>{
    {{TestUnit::kilogram, "kg"},
     {TestUnit::metre, "m"},
     {TestUnit::metre_per_second, "m/s"},
     {TestUnit::degree, "deg"},
     {TestUnit::newton, "N"},
     {TestUnit::watt, "W"},
     {TestUnit::one, "1"}}}; // a ratio

struct TestKind {
    std::string key;     // "split_squat_max"
    std::string name;    // "Rear-foot-elevated split squat"
    std::string quality; // key of data/qualities.csv; empty when it feeds none
    Measure measure;
    TestUnit unit;
    Scale scale;
    SideRule side_rule;
    double trial_error;   // SD between trials of one day (a fraction when logarithmic)
    double day_error;     // SD between days, the trial part taken out (a fraction when logarithmic)
    double plausible_low; // a value outside is refused
    double plausible_high;
    std::optional<Mass> ball_mass; // for ball tests: the ball the test is about
    std::string protocol;          // what is done, in a sentence or two
    std::vector<std::string> sources;
};

// What a test can stand for. Its prior slope to velocity is data/velocity_priors.csv.
struct Quality {
    std::string key;     // "single_leg_strength"
    std::string name;    // "Single-leg strength"
    std::string meaning; // one line for the coach
    bool trainable;      // false: body size, velocity itself
};

} // namespace amentum
