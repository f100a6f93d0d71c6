// Where is each link of a chain, and how does it accelerate, for angles, rates and accelerations given?
//
// A chain grows from a base point B. Link i points along (cos phi, sin phi), phi its inclination in W from the x axis:
//
//     p_WT = p_WB + L (cos phi, sin phi)                                       the next link's base
//     a_WT = a_WB + L alpha (-sin phi, cos phi) - L omega^2 (cos phi, sin phi)
//     p_WC, a_WC the same with the distance of the mass centre in place of L
//
// Rates and accelerations are those of the inclination in W, not of the joint's angle: the sum of the joint's own and all
// before it. The answer is in the order solve_chain wants: the free end first, the base last.
// solve_moving_chain does both at once, without pushes from outside, and
// keeps only what the recursion needs: the quicker way when angles are what is known.
// Units: m, kg, kg m2, radians, rad/s, rad/s2. Contract: as many answers as links, 16 at most for solve_moving_chain.
#pragma once

#include "body_mechanics/inverse_dynamics.h"

namespace amentum {

struct MovingLink {
    double length;
    double mass;
    double centre;  // of mass, from the base end
    double inertia; // about the centre
    double phi;
    double omega = 0;
    double alpha = 0;
};

struct MovingBase {
    Vector2 p_WB = {0, 0};
    Vector2 a_WB = {0, 0};
};

void move_chain(const MovingBase& base, std::span<const MovingLink> from_base,
                std::span<ChainLink> from_free_end);

// Joint loads base first: by the link before (or the base) on each link, at its base end.
void solve_moving_chain(const MovingBase& base, std::span<const MovingLink> from_base,
                        std::span<JointLoad> from_base_up, Vector2 g = {0, -lift_gravity});

} // namespace amentum
