// A solved posture: where every point is, which forces hold it, and what the joints must do.
//
// Positions p_W in metres, W on the floor (or box) under the lead ankle, x forward, y up. Angles in radians, from upright
// as in setup.h. Moments in N m, named by what the muscles must do: plantar flexion, knee extension, hip extension
// positive; elbow flexion and shoulder extension positive. legs: 1 when `lead` is one leg, 2 when it is both together
// (squats, deadlifts): divide for one leg.
#pragma once

#include "body_mechanics/setup.h"

#include <array>
#include <cstddef>

namespace amentum {

enum class Mark {
    heel,
    toe,
    ankle,
    knee,
    hip,
    shoulder,
    head_top,
    elbow,
    wrist,
    grip,
    load,      // the load's centre; where it is not held, the shoulder
    rear_hold, // where the rear foot rests
    rear_ankle,
    rear_knee,
};
inline constexpr std::size_t marks = 14;

struct FootForce {
    Vector2 force; // by the floor on the foot (feet)
    Vector2 p_WP;  // centre of pressure, or the rear foot's hold
};

struct LegMoments {
    double ankle;
    double knee;
    double hip;
};

struct Weight { // one of the parts that hang on the hips: trunk, arms, load
    double mass;
    Vector2 p_WC;
};

struct Pose {
    Setup setup; // as given; what balance solved stands in the inclinations below
    int legs;
    double shin, thigh, trunk; // inclinations
    double forearm = 0;        // pull-up: lean of the forearm
    std::array<Vector2, marks> points;
    FootForce front;
    std::optional<FootForce> rear;
    std::optional<LegMoments> lead; // none for a pull-up
    std::optional<LegMoments> rear_leg;
    double elbow = 0, shoulder = 0;   // pull-up: both arms
    std::array<Weight, 6> above_hips; // mass 0: unused
    double rear_share = 0;            // used

    Vector2 at(Mark mark) const { return points[static_cast<std::size_t>(mark)]; }
    Vector2& at(Mark mark) { return points[static_cast<std::size_t>(mark)]; }
    double knee() const { return shin + thigh; } // flexion
    double hip() const { return thigh + trunk; } // flexion
    // H / (H + K) of the lead leg; none when H + K is not above 0. Never H / K: it grows without bound where the knee
    // moment passes through zero.
    std::optional<double> hip_share() const {
        if (!lead || !(lead->hip + lead->knee > 0))
            return std::nullopt;
        return lead->hip / (lead->hip + lead->knee);
    }
};

} // namespace amentum
