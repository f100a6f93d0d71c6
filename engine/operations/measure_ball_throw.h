// measure_ball_throw: joint moments of an overhead ball throw, kneeling or standing, at a motion read from film.
//
// body_mechanics/ball_throw.h. Inclinations in degrees from forward level, 90 up, of each link from its lower end (arms:
// from the shoulder on). Turning forward is a falling inclination, so rates of a throw are negative. Rates and accelerations
// left out count as zero, and the answer says so. Bands hold 3 degrees an inclination, 5 % of the rates, 15 % of the
// accelerations (proposals, no source). Keeps nothing.
// Refuses a ball missing or in two units, a standing throw without its shank, motions no film shows.
// What it cannot tell: how the two arms share, spin about the long axes, the sideways (valgus) moment at the elbow.
#pragma once

#include "operations/solve_setup.h"

namespace amentum {

struct MeasureBallThrowRequest : BodyRequest {
    std::string stance; // kneeling, standing
    std::optional<double> ball_kg, ball_lb;
    std::optional<double> shank_deg; // standing only
    double thigh_deg, trunk_deg, upper_arm_deg, forearm_deg;
    std::optional<double> shank_rate, thigh_rate, trunk_rate, upper_arm_rate, forearm_rate; // deg/s
    std::optional<double> shank_acceleration, thigh_acceleration, trunk_acceleration, upper_arm_acceleration,
        forearm_acceleration; // deg/s2
};
BOOST_DESCRIBE_STRUCT(MeasureBallThrowRequest, (BodyRequest),
                      (stance, ball_kg, ball_lb, shank_deg, thigh_deg, trunk_deg, upper_arm_deg, forearm_deg,
                       shank_rate, thigh_rate, trunk_rate, upper_arm_rate, forearm_rate, shank_acceleration,
                       thigh_acceleration, trunk_acceleration, upper_arm_acceleration, forearm_acceleration))

struct ShownThrowJoint {
    std::string joint; // elbow, shoulder, hip, knee, ankle
    std::string name;
    double moment;    // N m, both sides together; positive throws: turns what lies above it forward
    double low, high; // its 80 % band, from what film may err
    double still;     // the same posture held still
    std::string words;
};
BOOST_DESCRIBE_STRUCT(ShownThrowJoint, (), (joint, name, moment, low, high, still, words))

struct DrawnThrow {                 // metres; x forward, y up, from the floor under the ankle or the knee
    std::vector<DrawnPoint> points; // ankle (standing), knee, hip, shoulder, elbow, wrist, ball
    std::vector<DrawnForce> forces; // base: by the floor
    double velocity_x, velocity_y;  // of the ball, m/s
    double scale_moment;            // N m of the largest arc
};
BOOST_DESCRIBE_STRUCT(DrawnThrow, (), (points, forces, velocity_x, velocity_y, scale_moment))

struct MeasureBallThrowAnswer {
    ShownBody body;
    std::string stance;
    double ball; // in ball_unit
    std::string ball_unit;
    double ball_speed; // at that instant, by the rates given
    std::string speed_unit;
    std::vector<ShownThrowJoint> joints;
    DrawnThrow drawing;
    std::string drawing_words;
    std::vector<std::string> words;
    std::vector<std::string> cautions;
    std::string cannot_tell;
    std::vector<std::string> sources;
};
BOOST_DESCRIBE_STRUCT(MeasureBallThrowAnswer, (),
                      (body, stance, ball, ball_unit, ball_speed, speed_unit, joints, drawing, drawing_words,
                       words, cautions, cannot_tell, sources))

Result<MeasureBallThrowAnswer> measure_ball_throw(Workplace&, const MeasureBallThrowRequest&);

} // namespace amentum
