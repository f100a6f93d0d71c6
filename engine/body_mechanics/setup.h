// A lift as it is set up: what the coach can choose, and what is left for balance to decide.
//
// Each lift needs exactly the settings of its row; one too many and posture and balance contradict each other
// (over_determined), one too few and there is no one answer (missing_field).
//
//   lift                             needs                                                    balance solves
//   rear_foot_raised_split_squat     stance, pad_height, depth, one of trunk_lean, shin_lean  the other of the two
//   split_squat, lunge               stance, depth, one of trunk_lean, shin_lean              the other
//   step_up                          stance, box_height, thigh, one of trunk_lean, shin_lean  the other
//   back_squat, front_squat          depth or knee, one of trunk_lean, shin_lean              the other
//   hex_bar_deadlift, straight_bar_deadlift   handle_height, one of shin_lean, knee           hips and trunk
//   pull_up                          elbow                                                    the forearm's lean
//
// depth: one of thigh (from upright; 90 degrees = level) and clearance (of the rear knee over the floor).
// shin_lean is the one parameter of style: upright shins are the hinge, leaning ones the squat.
// Angles in degrees from upright: shin and trunk positive when leaning forward, thigh when the hip is behind the knee;
// knee 0 straight; elbow 0 straight.
// stance: level distance from the lead ankle to where the rear foot rests (the laces on a pad, the ball of the foot on
// the floor). handle_height: of the grip over the floor at the start of the pull.
#pragma once

#include "body_mechanics/planar.h"
#include "values/enum_words.h"
#include "values/quantity.h"

#include <optional>

namespace amentum {

enum class Lift {
    rear_foot_raised_split_squat,
    split_squat,
    lunge,
    step_up,
    back_squat,
    front_squat,
    hex_bar_deadlift,
    straight_bar_deadlift,
    pull_up,
};
template <>
inline constexpr std::array<std::pair<Lift, std::string_view>, 9> words_of<Lift>{
    {{Lift::rear_foot_raised_split_squat, "rear_foot_raised_split_squat"},
     {Lift::split_squat, "split_squat"},
     {Lift::lunge, "lunge"},
     {Lift::step_up, "step_up"},
     {Lift::back_squat, "back_squat"},
     {Lift::front_squat, "front_squat"},
     {Lift::hex_bar_deadlift, "hex_bar_deadlift"},
     {Lift::straight_bar_deadlift, "straight_bar_deadlift"},
     {Lift::pull_up, "pull_up"}}};

// Where the load is held. Offsets are assumptions of this project (holds.h), open to change by load_ahead.
enum class Hold {
    straight_bar,
    safety_bar,
    camber_bar,
    front_bar,
    dumbbells,
    goblet,
    hex_bar,
    bar_in_hands,
    belt,
    body
};
template <>
inline constexpr std::array<std::pair<Hold, std::string_view>, 10> words_of<Hold>{
    {{Hold::straight_bar, "straight_bar"}, // across the upper back
     {Hold::safety_bar, "safety_bar"},     // padded yoke, plates ahead of the shoulders
     {Hold::camber_bar, "camber_bar"},     // dropped bar on the back, plates hanging low
     {Hold::front_bar, "front_bar"},       // across the front of the shoulders
     {Hold::dumbbells, "dumbbells"},       // one in each hand, hanging
     {Hold::goblet, "goblet"},             // one, upright at the breastbone
     {Hold::hex_bar, "hex_bar"},           // handles beside the hips
     {Hold::bar_in_hands, "bar_in_hands"}, // straight bar at the shins
     {Hold::belt, "belt"},                 // hung from the waist
     {Hold::body, "body"}}};               // nothing held

struct Setup {
    Lift lift;
    Hold hold;
    Mass load; // of bar and plates, both dumbbells, or the plate on the belt; 0 to 500 kg
    std::optional<Length> stance = {};
    std::optional<Length> pad_height = {}; // of the top of the pad: 0.05 to 0.8 m
    std::optional<Length> box_height = {}; // under the lead foot: 0.05 to 0.8 m
    std::optional<Length> handle_height = {};
    std::optional<Angle> trunk_lean = {};
    std::optional<Angle> shin_lean = {};
    std::optional<Angle> thigh = {};
    std::optional<Angle> knee = {};
    std::optional<Angle> elbow = {};
    std::optional<Length> clearance = {};

    // What is assumed when it is not measured; each has an error that the bands carry (pose_band.h).
    double pressure_share = 0.20; // centre of pressure ahead of the ankle, of the foot's length
    std::optional<double> rear_share =
        {}; // of the vertical force under both feet; none: the lift's own (rear_share.h)
    Force rear_force_x = Force::newtons(0); // forward force under the rear foot
    std::optional<double> load_along = {};  // of the bar, from the hip, of the trunk's length: 0 to 1.2
    std::optional<Length> load_ahead = {};  // of the bar, square to the trunk, from the shoulder's line
};

} // namespace amentum
