// solve_setup: the posture that balances a lift as it is set up, what hip and knee do in it, and the set-up that gives
// what is wanted.
//
// The settings a lift takes stand in body_mechanics/setup.h; a setting it does not take is refused, and so is one too many
// or too few. Lengths in cm or in, loads in kg or lb. With `want` and `vary` the setting named is searched for
// (body_mechanics/search_setup.h) between low and high of its range, inside the athlete's own range of motion; want =
// start_angle asks for the knee angle of the athlete's own lead leg at foot contact, or the published mean, and says
// which. Every number carries its band (body_mechanics/pose_band.h). Keeps nothing.
// What it cannot tell: muscle forces, the frontal plane, impact; moments of the model were never compared with a
// laboratory's.
#pragma once

#include "operations/describe_body.h"

namespace amentum {

// One set-up of one lift.
struct SetupRequest {
    std::string lift;
    std::optional<std::string> hold;        // left out: the lift's usual one
    std::optional<double> load_kg, load_lb; // needed unless nothing is held
    std::optional<double> stance_cm, stance_in;
    std::optional<double> pad_cm, pad_in;
    std::optional<double> box_cm, box_in;
    std::optional<double> handle_cm, handle_in;
    std::optional<double> clearance_cm, clearance_in;
    std::optional<double> trunk_lean_deg, shin_lean_deg, thigh_deg, knee_deg, elbow_deg;
    std::optional<double> load_ahead_cm, load_ahead_in;
    std::optional<double>
        pressure_share; // centre of pressure ahead of the ankle, of the foot's length: -0.25 to 0.75
    std::optional<double> rear_share;   // of the vertical force: 0 to 0.6
    std::optional<double> rear_force_n; // forward force under the rear foot: -500 to 500
};
BOOST_DESCRIBE_STRUCT(SetupRequest, (),
                      (lift, hold, load_kg, load_lb, stance_cm, stance_in, pad_cm, pad_in, box_cm, box_in,
                       handle_cm, handle_in, clearance_cm, clearance_in, trunk_lean_deg, shin_lean_deg,
                       thigh_deg, knee_deg, elbow_deg, load_ahead_cm, load_ahead_in, pressure_share,
                       rear_share, rear_force_n))

struct SolveSetupRequest : BodyRequest, SetupRequest {
    std::optional<std::string>
        want; // knee_angle, hip_angle, shin_angle, trunk_angle, hip_share, knee_moment, hip_moment,
              // start_angle
    std::optional<double> wanted; // degrees, per cent, or N m of one lead leg; not with start_angle
    std::optional<std::string>
        vary; // stance, pad_height, box_height, handle_height, trunk_lean, shin_lean, load
};
BOOST_DESCRIBE_STRUCT(SolveSetupRequest, (BodyRequest, SetupRequest), (want, wanted, vary))

struct ShownSetting {  // one the lift takes; a slider
    std::string key;   // the request's field without its unit: "stance", "trunk_lean"
    std::string field; // the request's field in this facility's unit: "stance_in", "trunk_lean_deg"
    std::string name;  // "Stance, lead ankle to back laces"
    double value;
    std::string unit;
    int decimals;
    double low, high, step; // of the slider
    std::string how;        // given, solved, found, usual
    double error;           // standard error of a solved one; 0 otherwise
};
BOOST_DESCRIBE_STRUCT(ShownSetting, (),
                      (key, field, name, value, unit, decimals, low, high, step, how, error))

struct ShownJoint {
    std::string joint; // lead_ankle, lead_knee, lead_hip, rear_ankle, rear_knee, rear_hip, elbow, shoulder
    std::string name;  // "knee, lead leg"
    std::optional<double> angle; // degrees of bend
    ShownEstimate moment;        // N m, straightening positive; of one leg; the interval is its 80 % band
    std::string words;           // "straightens with 223 N m"
};
BOOST_DESCRIBE_STRUCT(ShownJoint, (), (joint, name, angle, moment, words))

struct ShownCause { // what one error of it adds
    std::string cause;
    std::string name;
    double knee, hip;                // N m of one leg
    std::optional<double> hip_share; // percentage points
};
BOOST_DESCRIBE_STRUCT(ShownCause, (), (cause, name, knee, hip, hip_share))

struct DrawnPoint { // metres; x forward, y up, from the floor under the lead ankle
    std::string
        point; // heel, toe, ankle, knee, hip, shoulder, head_top, elbow, wrist, grip, load, rear_hold, rear_ankle,
               // rear_knee, rear_toe
    double x, y;
};
BOOST_DESCRIBE_STRUCT(DrawnPoint, (), (point, x, y))

struct DrawnForce {    // newtons, acting on the body at x, y
    std::string force; // front_foot, rear_foot, load
    double x, y, force_x, force_y;
};
BOOST_DESCRIBE_STRUCT(DrawnForce, (), (force, x, y, force_x, force_y))

struct DrawnSetup {
    std::vector<DrawnPoint> points; // those the lift has
    std::vector<DrawnForce> forces;
    double foot_low, foot_high;              // x of heel and toe of the lead foot: the limits of pressure
    double pressure_x, pressure_error;       // of the lead foot, metres
    double balance_x;                        // of the mass centre of body and load
    double floor_y;                          // under the lead foot: below 0 when it stands on a box
    std::optional<double> pad_x, pad_height; // the pad's near edge, and its top over the floor
    std::optional<double> box_height;
    std::optional<double> disc_radius; // of plates drawn at the load
    double scale_moment;               // N m of the largest arc
};
BOOST_DESCRIBE_STRUCT(DrawnSetup, (),
                      (points, forces, foot_low, foot_high, pressure_x, pressure_error, balance_x, floor_y,
                       pad_x, pad_height, box_height, disc_radius, scale_moment))

struct ShownSearch {
    std::string want;
    std::string words; // "Hip share 60 % at a stance of 38.2 in" or "Nearest: ...", whole sentences
    bool reached;
    double wanted;
    double value; // reached, or the nearest
    std::string unit;
    std::string vary;
    std::string stopped_by;  // empty when reached
    std::string wanted_from; // start_angle: "own test of 2026-05-06", "published mean [Key]"; otherwise empty
};
BOOST_DESCRIBE_STRUCT(ShownSearch, (),
                      (want, words, reached, wanted, value, unit, vary, stopped_by, wanted_from))

struct SolveSetupAnswer {
    ShownBody body;
    std::string lift;
    std::string lift_name;
    std::string hold;
    std::string hold_name;
    double load;
    std::string load_unit;
    std::vector<ShownSetting> settings; // every one the lift takes, in the order of the page
    std::vector<std::string> holds;     // that this lift can be done with
    std::vector<ShownJoint> joints;
    std::optional<ShownEstimate> hip_share; // per cent; null when hip and knee together do not extend
    std::string share_words;                // incl. why a ratio of hip to knee is not given
    std::vector<ShownCause> causes;         // of the bands, largest first
    DrawnSetup drawing;
    std::string drawing_words; // the drawing as text
    std::optional<ShownSearch> search;
    std::vector<std::string> card; // lines for the rack, in the gym's units
    std::vector<std::string> words;
    std::vector<std::string> cautions;
    std::string cannot_tell; // one line
    std::vector<std::string> sources;
};
BOOST_DESCRIBE_STRUCT(SolveSetupAnswer, (),
                      (body, lift, lift_name, hold, hold_name, load, load_unit, settings, holds, joints,
                       hip_share, share_words, causes, drawing, drawing_words, search, card, words, cautions,
                       cannot_tell, sources))

Result<SolveSetupAnswer> solve_setup(Workplace&, const SolveSetupRequest&);

} // namespace amentum
