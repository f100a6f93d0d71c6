#include "body_mechanics/inside/figure.h"

#include "body_mechanics/inverse_dynamics.h"

#include <cmath>

namespace amentum {
namespace {

Vector2 along_trunk(double trunk) {
    return {std::sin(trunk), std::cos(trunk)};
}
Vector2 ahead_of_trunk(double trunk) {
    return {std::cos(trunk), -std::sin(trunk)};
}

// Straight arms from the shoulder along d: points and the three weights of both arms.
void straight_arms(Pose& pose, const Body& body, Vector2 d) {
    const Vector2 S = pose.at(Mark::shoulder);
    pose.at(Mark::elbow) = S + body.upper_arm.length * d;
    pose.at(Mark::wrist) = pose.at(Mark::elbow) + body.forearm.length * d;
    pose.at(Mark::grip) = pose.at(Mark::wrist) + body.hand.length * d;
    pose.above_hips[1] = {2 * body.upper_arm.mass, S + body.upper_arm.centre * d};
    pose.above_hips[2] = {2 * body.forearm.mass, pose.at(Mark::elbow) + body.forearm.centre * d};
    pose.above_hips[3] = {2 * body.hand.mass, pose.at(Mark::wrist) + body.hand.centre * d};
}

// Bent arms: their weight lies on the trunk; the elbow is drawn where arms of that length reach the hands.
void bent_arms(Pose& pose, const Body& body, const HoldPlace& place, double trunk, Vector2 hands) {
    const Vector2 H = pose.at(Mark::hip), S = pose.at(Mark::shoulder);
    const double lower = body.forearm.length + body.hand.length;
    pose.at(Mark::grip) = hands;
    const auto one = two_link(S, hands, body.upper_arm.length, lower);
    const auto other = two_link(hands, S, lower, body.upper_arm.length);
    const Vector2 E = one ? (one->y < other->y ? *one : *other) : S + 0.5 * (hands - S); // elbows point down
    pose.at(Mark::elbow) = E;
    pose.at(Mark::wrist) = E + (body.forearm.length / lower) * (hands - E);
    const Vector2 C = H + place.arms_along * body.trunk.length * along_trunk(trunk) +
                      place.arms_ahead * ahead_of_trunk(trunk);
    pose.above_hips[1] = {2 * body.arm_mass(), C};
    pose.above_hips[2] = pose.above_hips[3] = {0, C};
}

} // namespace

TrunkLoad trunk_load(const Body& body, const Setup& setup, const HoldPlace& place) {
    const double load = setup.load.kilograms(), arms = 2 * body.arm_mass();
    const double trunk_moment = body.trunk.mass * body.trunk.centre;
    if (place.arms == ArmsAt::hanging) // everything in the hands hangs under the shoulder
        return {body.trunk.mass + arms + load, trunk_moment + (arms + load) * body.trunk.length, 0};
    return {body.trunk.mass + arms + load,
            trunk_moment + arms * place.arms_along * body.trunk.length +
                load * place.along * body.trunk.length,
            arms * place.arms_ahead + load * place.ahead};
}

LegPoints lead_leg_points(const Body& body, double shin, double thigh) {
    const Vector2 knee{body.shank.length * std::sin(shin),
                       body.ankle_height + body.shank.length * std::cos(shin)};
    return {knee, knee + Vector2{-body.thigh.length * std::sin(thigh), body.thigh.length * std::cos(thigh)}};
}

double lead_leg_moment(const Body& body, const LegPoints& p) {
    const double shank_share = 1 - body.shank.centre / body.shank.length; // of the way from ankle to knee
    const double thigh_share = body.thigh.centre / body.thigh.length;     // of the way from hip to knee
    return body.foot_mass * body.foot_centre.x + body.shank.mass * shank_share * p.knee.x +
           body.thigh.mass * (p.hip.x + thigh_share * (p.knee.x - p.hip.x));
}

std::optional<Vector2> two_link(Vector2 A, Vector2 B, double a, double b) {
    const Vector2 AB = B - A;
    const double d = length(AB);
    if (!(d > 0) || d > a + b || d < std::abs(a - b))
        return std::nullopt;
    const double along = (d * d + a * a - b * b) / (2 * d);
    const double across = std::sqrt(std::max(0.0, a * a - along * along));
    const Vector2 u = (1 / d) * AB;
    return A + along * u + across * Vector2{-u.y, u.x};
}

void place_figure(Pose& pose, const Body& body, const Inclinations& angles, const HoldPlace& place) {
    const auto [shin, thigh, trunk] = angles;
    pose.shin = shin;
    pose.thigh = thigh;
    pose.trunk = trunk;
    const auto [knee, hip] = lead_leg_points(body, shin, thigh);
    const Vector2 u = along_trunk(trunk), n = ahead_of_trunk(trunk);
    const Vector2 S = hip + body.trunk.length * u;
    pose.at(Mark::heel) = {body.heel(), 0};
    pose.at(Mark::toe) = {body.toe(), 0};
    pose.at(Mark::ankle) = {0, body.ankle_height};
    pose.at(Mark::knee) = knee;
    pose.at(Mark::hip) = hip;
    pose.at(Mark::shoulder) = S;
    pose.at(Mark::head_top) = hip + body.head_top * u;
    pose.above_hips = {};
    pose.above_hips[0] = {body.trunk.mass, hip + body.trunk.centre * u};
    const double load = pose.setup.load.kilograms();
    if (place.arms == ArmsAt::hanging) {
        straight_arms(pose, body, {0, -1});
        pose.at(Mark::load) = pose.at(Mark::grip);
    } else if (place.arms == ArmsAt::bar) {
        const Vector2 d = pose.at(Mark::load) - S; // the bar's place is known before the figure
        straight_arms(pose, body, (1 / length(d)) * d);
    } else {
        const Vector2 held = hip + place.along * body.trunk.length * u + place.ahead * n;
        pose.at(Mark::load) = held - Vector2{0, place.drop};
        bent_arms(pose, body, place, trunk, held - Vector2{0, place.drop * 0.8});
    }
    pose.above_hips[4] = {load, pose.at(Mark::load)};
}

LegMoments lead_moments(const Body& body, const Pose& pose) {
    const double legs = pose.legs;
    const Vector2 A = pose.at(Mark::ankle), K = pose.at(Mark::knee), H = pose.at(Mark::hip);
    const double shank_share = 1 - body.shank.centre / body.shank.length;
    const double thigh_share = body.thigh.centre / body.thigh.length;
    const std::array<ChainLink, 3> leg{{
        {legs * body.foot_mass,
         0,
         pose.front.p_WP,
         A,
         A + body.foot_centre,
         {0, 0},
         0,
         {pose.front.force, pose.front.p_WP, 0}},
        {legs * body.shank.mass, 0, A, K, A + shank_share * (K - A)},
        {legs * body.thigh.mass, 0, K, H, H + thigh_share * (K - H)},
    }};
    std::array<JointLoad, 3> loads;
    solve_chain(leg, loads);
    // On the distal link at its inner joint: plantar flexion and hip extension turn it clockwise, knee extension counter.
    return {-loads[0].moment, loads[1].moment, -loads[2].moment};
}

} // namespace amentum
