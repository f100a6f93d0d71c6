// The three closures behind solve_pose: each is given settings already checked.
#pragma once

#include "body_mechanics/solve_pose.h"

namespace amentum {

// Two feet one behind the other. The lead leg, trunk and load stand on the front foot; the rear leg reaches from the hip
// to its hold by two links, knee forward: thigh and shank to the ankle of a foot on its ball (heel raised, the foot 60
// degrees steep), or to the laces on a pad, 0.10 m beyond the ankle (both assumptions of this project, no source).
// Rear force: (rear_force_x, share of all weight) at the hold. A rear foot on the floor that carries nothing (step-up)
// hangs from a straight leg when it does not reach.
Result<Pose> solve_split_stance(const Body& body, const Setup& setup);

// As solve_pose, quicker when `near` is a posture of almost the same body and set-up: balance is looked for around it first.
Result<Pose> solve_pose_near(const Body& body, const Setup& setup, const Pose& near);
Result<Pose> solve_split_stance_near(const Body& body, const Setup& setup, const Pose& near);

// Two feet side by side, both legs alike: squats by depth and one lean, pulls by handle height and one of shin and knee.
// Hex bar: S.y - arm = handle height, load straight under the shoulder. Straight bar: |S - bar| = arm, the bar 4 cm ahead
// of the line from ankle to knee (or knee to hip when higher), square to it (assumption, no source).
Result<Pose> solve_two_feet(const Body& body, const Setup& setup);

// Hanging from a bar by both hands, body and legs straight down: the mass centre hangs under the hands.
Result<Pose> solve_hanging(const Body& body, const Setup& setup);

// No posture, said as what stops it.
Refusal refuse_posture(std::string field, std::string sentence);

// The gross limits of any joints, knee 0 to 160 degrees, hip -30 to 150, shin -30 to 60: a posture beyond them is none.
std::optional<Refusal> beyond_any_body(const Pose& pose);

} // namespace amentum
