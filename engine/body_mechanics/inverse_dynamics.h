// Which forces and moments must act at the joints, for the motion seen and the forces measured?
//
// Planar Newton-Euler recursion over an open chain, from its free end inward [Duarte, after VanDenBogert1996]. For link i
// with free-end joint D, inner joint P and mass centre C (positions in W):
//
//     F_P = m (a_WC - g) - F_ext - F_D
//     M_P = I alpha - M_ext - M_D - (p_WD - p_WC) x F_D - (p_WP - p_WC) x F_P - (p_WE - p_WC) x F_ext
//
// F_D, M_D act on this link at D: the opposite of what the link before it needed at its P (none at the free end).
// g = (0, -9.80665) unless given. Static: leave accelerations at zero. Any link may carry one external wrench: force,
// the point E it acts at, and a free moment.
// Units: kg, kg m2, m, m/s2, rad/s2, N, N m; moments positive from x (forward) to y (up).
// Contract (assert): as many answers as links; masses not below 0.
// What it cannot tell: which muscle makes the moment, what two muscles spend against each other, the pressure inside a
// joint, anything out of the plane, or an impact that the accelerations given do not hold.
// Example: one link of 10 kg lying level, 1 m long, centre in the middle, held at one end: 98.0665 N and 49.03325 N m
#pragma once

#include "body_mechanics/planar.h"

#include <span>

namespace amentum {

struct Wrench {
    Vector2 force = {0, 0};
    Vector2 p_WE = {0, 0}; // where it acts
    double moment = 0;     // free moment besides
};

struct ChainLink {
    double mass;
    double inertia; // about the mass centre
    Vector2 p_WD;   // joint toward the free end; anywhere for the first link
    Vector2 p_WP;   // joint toward the base
    Vector2 p_WC;
    Vector2 a_WC = {0, 0};
    double alpha = 0;
    Wrench external = {};
};

struct JointLoad { // on the link, at its joint P, by its neighbour toward the base
    Vector2 force;
    double moment;
};

void solve_chain(std::span<const ChainLink> from_free_end, std::span<JointLoad> answer,
                 Vector2 g = {0, -lift_gravity});

} // namespace amentum
