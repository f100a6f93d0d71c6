// Which moments throw this ball overhead, at the motion given?
//
// A chain from the base up: kneeling, thigh - trunk - arms; standing, shank - thigh - trunk - arms; both arms move
// together, upper arms, forearms, hands with the ball in line with the forearms. Inclinations, rates and accelerations of
// each link in W are given (from film); solve_moving_chain does the rest. Moments are those of both sides together.
// Sign: positive throws, it turns all that lies beyond the joint forward (from y to x, against planar.h), so that the
// rates of a throw are negative and its moments positive.
// Units: degrees, deg/s, deg/s2 at this interface; N m. Inclination: direction of the link from its base end, 0 = forward
// level, 90 = up.
// Band: each number read from film moved by its error, half differences added in squares (first order, independent).
// Ranges: ball 0.05 to 10 kg; inclinations -180 to 360 degrees, rates within +-2000 deg/s, accelerations within +-60000
// deg/s2 (proposals). Refusals: out_of_range with the field ("ball", "trunk", "trunk_rate", "trunk_acceleration", ...),
// missing_field without the shank of a standing throw, method_does_not_apply with the shank of a kneeling one.
// Warnings: kneeling throws use 4 to 6 lb and at most 8, because speed is the point (common practice, no source).
// What it cannot tell: the motion itself; how the two arms share; the spin of trunk and shoulder about their long axes;
// the elbow's sideways (valgus) moment.
// Example: straight arms held level behind the head, one metre of massless arm and a ball of 1 kg: shoulders 9.80665 N m
#pragma once

#include "body_mechanics/body.h"

#include <string>
#include <vector>

namespace amentum {

enum class ThrowStance { kneeling, standing };
template <>
inline constexpr std::array<std::pair<ThrowStance, std::string_view>, 2> words_of<ThrowStance>{
    {{ThrowStance::kneeling, "kneeling"}, {ThrowStance::standing, "standing"}}};

struct LinkMotion {
    Angle inclination;
    double rate = 0;         // deg/s
    double acceleration = 0; // deg/s2
};

struct OverheadThrow {
    ThrowStance stance;
    Mass ball;
    std::optional<LinkMotion> shank; // standing only
    LinkMotion thigh, trunk, upper_arm, forearm;
    // One standard error of what was read (proposals, no source):
    Angle angle_error = Angle::degrees(3); // of each inclination
    double rate_error_share = 0.05;        // of each rate
    double acceleration_error_share = 0.15;
};

struct ThrowMoments { // N m of both sides; positive throws: turns all that lies beyond the joint forward
    double elbow, shoulder, hip, knee;
    std::optional<double> ankle; // standing
};

struct ThrowLoads {
    ThrowMoments moving;
    ThrowMoments moving_error;   // standard errors
    ThrowMoments still;          // the same posture held
    Vector2 ball_velocity;       // m/s
    Vector2 ball_acceleration;   // m/s2
    Vector2 base_force;          // by the floor on the ankles, or on the knees when kneeling, N
    std::vector<Vector2> points; // from the base: [ankle,] knee, hip, shoulder, elbow, wrist, ball
    std::vector<std::string> warnings;
};

Result<ThrowLoads> measure_ball_throw(const Body& body, const OverheadThrow& thrown);

} // namespace amentum
