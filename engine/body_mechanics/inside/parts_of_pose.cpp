#include "body_mechanics/inside/parts_of_pose.h"

#include "body_mechanics/holds.h"

namespace amentum {
namespace {

void add(std::vector<Weight>& all, const std::vector<Weight>& more) {
    all.insert(all.end(), more.begin(), more.end());
}

std::vector<Weight> arm_parts(const Body& body, const Pose& pose) {
    const Vector2 S = pose.at(Mark::shoulder), E = pose.at(Mark::elbow), W = pose.at(Mark::wrist);
    return {{2 * body.upper_arm.mass, centre_between(S, E, body.upper_arm)},
            {2 * body.forearm.mass, centre_between(E, W, body.forearm)},
            {2 * body.hand.mass, centre_between(W, pose.at(Mark::grip), body.hand)}};
}

// Arms that hold something on the trunk weigh at a place on it (holds.h).
Weight arms_on_trunk(const Body& body, const Pose& pose, const HoldPlace& place) {
    const Vector2 H = pose.at(Mark::hip), HS = pose.at(Mark::shoulder) - H;
    const Vector2 ahead = (1 / length(HS)) * Vector2{HS.y, -HS.x};
    return {2 * body.arm_mass(), H + place.arms_along * HS + place.arms_ahead * ahead};
}

// Hanging legs: thigh and shank at their centres, the feet relaxed straight under the hips.
std::vector<Weight> hanging_legs(const Body& body, const Pose& pose) {
    const Vector2 H = pose.at(Mark::hip), A = pose.at(Mark::ankle);
    return leg_parts(body, 2, {H, pose.at(Mark::knee), A, {H.x, A.y + body.foot_centre.y}});
}

} // namespace

Vector2 centre_between(Vector2 joint, Vector2 end, const BodyLink& link) {
    return joint + (link.centre / link.length) * (end - joint);
}

LegOfPose rear_leg_points(const Pose& pose) {
    const Vector2 ankle = pose.at(Mark::rear_ankle);
    return {pose.at(Mark::hip), pose.at(Mark::rear_knee), ankle, 0.5 * (ankle + pose.at(Mark::rear_hold))};
}

std::vector<Weight> leg_parts(const Body& body, double legs, const LegOfPose& leg) {
    return {{legs * body.thigh.mass, centre_between(leg.hip, leg.knee, body.thigh)},
            {legs * body.shank.mass, centre_between(leg.knee, leg.ankle, body.shank)},
            {legs * body.foot_mass, leg.foot}};
}

std::vector<Weight> parts_below_shoulders(const Body& body, const Pose& pose) {
    std::vector<Weight> parts{
        {body.trunk.mass, centre_between(pose.at(Mark::hip), pose.at(Mark::shoulder), body.trunk)},
        {pose.setup.load.kilograms(), pose.at(Mark::load)}};
    add(parts, hanging_legs(body, pose));
    return parts;
}

std::vector<Weight> parts_on_hips(const Body& body, const Pose& pose) {
    if (pose.setup.lift == Lift::pull_up) {
        auto parts = parts_below_shoulders(body, pose);
        add(parts, arm_parts(body, pose));
        return parts;
    }
    std::vector<Weight> parts{
        {body.trunk.mass, centre_between(pose.at(Mark::hip), pose.at(Mark::shoulder), body.trunk)},
        {pose.setup.load.kilograms(), pose.at(Mark::load)}};
    const HoldPlace place = hold_place(pose.setup);
    if (place.arms == ArmsAt::trunk)
        parts.push_back(arms_on_trunk(body, pose, place));
    else
        add(parts, arm_parts(body, pose));
    return parts;
}

std::vector<Weight> all_parts(const Body& body, const Pose& pose, std::vector<Weight> on_hips) {
    if (pose.setup.lift == Lift::pull_up)
        return on_hips;
    const Vector2 A = pose.at(Mark::ankle);
    add(on_hips,
        leg_parts(body, pose.legs, {pose.at(Mark::hip), pose.at(Mark::knee), A, A + body.foot_centre}));
    if (pose.rear)
        add(on_hips, leg_parts(body, 1, rear_leg_points(pose)));
    return on_hips;
}

} // namespace amentum
