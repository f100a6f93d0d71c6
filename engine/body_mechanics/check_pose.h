// Does this pose really stand? Checked from its points and forces alone, not by the way it was solved.
//
//   force        weights of all parts and the load against the forces under the feet, N
//   balance      moments of the same about the front centre of pressure, N m
//   hips         lead + rear hip moments against the moment of head, arms, trunk and load about the hip, N m
//   virtual work hip and knee against the change of potential energy for a small turn of trunk and thigh, N m
//   feet         centre of pressure inside heel and toe; rear foot pushes, never pulls
//   reach        link lengths between the points as the body has them, m
#pragma once

#include "body_mechanics/solve_pose.h"

namespace amentum {

struct PoseResiduals {
    double force;
    double balance;
    double hips;
    double trunk_work; // virtual work of the trunk's turn
    double thigh_work;
    double shin_work;
    double reach;
    bool pressure_inside_foot;
    bool rear_foot_pushes;
};

PoseResiduals check_pose(const Body& body, const Pose& pose);

} // namespace amentum
