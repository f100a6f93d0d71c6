// Weights of a body's parts at the points of a pose, gathered anew: what check_pose weighs instead of the pose's own list.
#pragma once

#include "body_mechanics/body.h"
#include "body_mechanics/pose.h"

#include <vector>

namespace amentum {

Vector2 centre_between(Vector2 joint, Vector2 end, const BodyLink& link); // of a link from joint to end

struct LegOfPose {
    Vector2 hip, knee, ankle, foot; // foot: its mass centre
};
LegOfPose rear_leg_points(const Pose& pose);

std::vector<Weight> leg_parts(const Body& body, double legs, const LegOfPose& leg); // thigh, shank, foot

// Trunk with head, arms and load; for a pull-up the legs hang among them.
std::vector<Weight> parts_on_hips(const Body& body, const Pose& pose);
std::vector<Weight> parts_below_shoulders(const Body& body, const Pose& pose); // of a pull-up

// `on_hips` and the legs that stand.
std::vector<Weight> all_parts(const Body& body, const Pose& pose, std::vector<Weight> on_hips);

} // namespace amentum
