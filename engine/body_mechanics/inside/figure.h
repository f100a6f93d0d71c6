// The figure of a lift from its angles: points, weights and joint moments of lead leg, trunk, arms and load.
#pragma once

#include "body_mechanics/body.h"
#include "body_mechanics/holds.h"
#include "body_mechanics/pose.h"

namespace amentum {

struct Inclinations { // radians, from upright, as in setup.h
    double shin, thigh, trunk;
};

// What hangs on the hips, as a function of the trunk's lean alone: mass, and m (x - H.x) = sine sin + cosine cos.
struct TrunkLoad {
    double mass;
    double sine;
    double cosine;
    double moment(double trunk) const { return sine * std::sin(trunk) + cosine * std::cos(trunk); }
};
TrunkLoad trunk_load(const Body& body, const Setup& setup,
                     const HoldPlace& place); // not for a bar in the hands

// Knee and hip over an ankle.
struct LegPoints {
    Vector2 knee, hip;
};
LegPoints lead_leg_points(const Body& body, double shin, double thigh);

// sum of m x of foot, shank and thigh of one leg on the ankle at x = 0, and their mass.
double lead_leg_moment(const Body& body, const LegPoints& points);

// Third corner of a triangle: at distance a from A and b from B, on the left of A -> B. None when out of reach.
std::optional<Vector2> two_link(Vector2 A, Vector2 B, double a, double b);

// Fills points of lead leg, trunk, head, arms and load, and the weights above the hips.
void place_figure(Pose& pose, const Body& body, const Inclinations& angles, const HoldPlace& place);

// Joint moments of a leg on the floor under `force` at `p_WP`; legs: how many such legs the force is shared by.
LegMoments lead_moments(const Body& body, const Pose& pose);

} // namespace amentum
