// Does this pose really stand? Checked from its points and forces alone, not by the way it was solved.
//
//   force        weights of all parts and the load against the forces under the feet, N
//   balance      moments of the same about the front centre of pressure, N m
//   hips         lead + rear hip moments against the moment of head, arms, trunk and load about the hip, N m
//   virtual work change of potential energy for a small turn of one link, N m: hips for the trunk's, lead hip and knee for
//                the thigh's, knee and ankle for the shin's; of the rear leg, ankle for its foot's turn, knee for all below
//                the knee, hip for the whole leg
//   weights      what the pose says hangs on the hips against the body's own parts at the pose's points: N, and N m of
//                their moments about the hip
//   feet         centre of pressure inside heel and toe; rear foot pushes, never pulls
//   reach        link lengths between the points as the body has them, m
// Pull-up: force and balance are those of the bar; thigh_work is the elbow's, for a turn of the forearms; hips is the
// shoulder's, against what hangs under the shoulders.
// A residual is never hidden by a number that is none: it is then none itself.
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
    double rear_work; // the worst of the rear leg's three
    double weights;
    double reach;
    bool pressure_inside_foot;
    bool rear_foot_pushes;

    double worst() const; // of all numbers above
};

PoseResiduals check_pose(const Body& body, const Pose& pose);

} // namespace amentum
