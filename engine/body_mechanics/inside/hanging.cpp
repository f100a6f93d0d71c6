#include "body_mechanics/inside/balance_root.h"
#include "body_mechanics/inside/closures.h"
#include "body_mechanics/inverse_dynamics.h"

#include <numbers>

namespace amentum {
namespace {

constexpr double degree = std::numbers::pi / 180;
constexpr double feet_over_floor = 0.10; // m, at full hang: where the bar is drawn

struct Arms {
    Vector2 grip, wrist, elbow, shoulder;
};

// lean: of the forearm from upright, elbow ahead of the hands; bend: of the elbow.
Arms arms_at(const Body& body, Vector2 grip, double lean, double bend) {
    const Vector2 forearm{std::sin(lean), -std::cos(lean)};                 // hand to elbow
    const Vector2 upper_arm{std::sin(lean - bend), -std::cos(lean - bend)}; // elbow to shoulder
    const Vector2 wrist = grip + body.hand.length * forearm, elbow = wrist + body.forearm.length * forearm;
    return {grip, wrist, elbow, elbow + body.upper_arm.length * upper_arm};
}

struct ArmCentres {
    Vector2 hand, forearm, upper_arm;
};
ArmCentres centres_of(const Body& body, const Arms& a) {
    const auto between = [](Vector2 from, Vector2 to, const BodyLink& link) {
        return from + (link.centre / link.length) * (to - from);
    };
    return {between(a.wrist, a.grip, body.hand), between(a.elbow, a.wrist, body.forearm),
            between(a.shoulder, a.elbow, body.upper_arm)};
}

double mass_below_shoulders(const Body& body, const Setup& setup) {
    return body.trunk.mass + 2 * body.leg_mass() + setup.load.kilograms();
}

void hang_body(Pose& pose, const Body& body, Vector2 S) {
    const Vector2 H = S - Vector2{0, body.trunk.length}, K = H - Vector2{0, body.thigh.length};
    const Vector2 A = K - Vector2{0, body.shank.length};
    pose.at(Mark::shoulder) = S;
    pose.at(Mark::head_top) = H + Vector2{0, body.head_top};
    pose.at(Mark::hip) = H;
    pose.at(Mark::knee) = K;
    pose.at(Mark::ankle) = A;
    pose.at(Mark::heel) = A + Vector2{body.heel(), -body.ankle_height};
    pose.at(Mark::toe) = A + Vector2{body.toe(), -body.ankle_height};
    pose.at(Mark::load) = H - Vector2{0, pose.setup.load.kilograms() > 0 ? 0.30 : 0};
    pose.above_hips[0] = {body.trunk.mass, H + Vector2{0, body.trunk.centre}};
    pose.above_hips[4] = {pose.setup.load.kilograms(), pose.at(Mark::load)};
    const Vector2 thigh = H - Vector2{0, body.thigh.centre}, shank = K - Vector2{0, body.shank.centre};
    const double legs = 2 * body.leg_mass();
    const Vector2 foot = A + body.foot_centre;
    // The mass centre of both legs counts straight under the hips: feet hang relaxed.
    const double y =
        (2 * (body.thigh.mass * thigh.y + body.shank.mass * shank.y + body.foot_mass * foot.y)) / legs;
    pose.above_hips[5] = {legs, {H.x, y}};
}

} // namespace

Result<Pose> solve_hanging(const Body& body, const Setup& setup) {
    const double bend = setup.elbow->radians(), below = mass_below_shoulders(body, setup);
    const double total = below + 2 * body.arm_mass();
    const double reach =
        body.arm_length() + body.trunk.length + body.thigh.length + body.shank.length + body.ankle_height;
    const Vector2 grip{0, reach + feet_over_floor};
    const auto centre_of_mass = [&](double lean) {
        const Arms arms = arms_at(body, grip, lean, bend);
        const ArmCentres c = centres_of(body, arms);
        return (below * arms.shoulder.x + 2 * (body.hand.mass * c.hand.x + body.forearm.mass * c.forearm.x +
                                               body.upper_arm.mass * c.upper_arm.x)) /
               total;
    };
    const BalanceRoot root = find_balance(centre_of_mass, -1 * degree, 89 * degree, 18);
    if (!root.at)
        return refuse_posture("elbow", "No lean of the forearms hangs this body under its hands.");
    const Arms arms = arms_at(body, grip, *root.at, bend);
    const ArmCentres c = centres_of(body, arms);
    Pose pose{setup};
    pose.legs = 2;
    pose.shin = pose.thigh = pose.trunk = 0;
    pose.forearm = *root.at;
    pose.above_hips = {};
    hang_body(pose, body, arms.shoulder);
    pose.at(Mark::elbow) = arms.elbow;
    pose.at(Mark::wrist) = arms.wrist;
    pose.at(Mark::grip) = grip;
    pose.above_hips[1] = {2 * body.upper_arm.mass, c.upper_arm};
    pose.above_hips[2] = {2 * body.forearm.mass, c.forearm};
    pose.above_hips[3] = {2 * body.hand.mass, c.hand};
    pose.front = {{0, total * lift_gravity}, grip}; // the bar carries all
    const std::array<ChainLink, 3> links{{
        {2 * body.hand.mass, 0, grip, arms.wrist, c.hand, {0, 0}, 0, {pose.front.force, grip, 0}},
        {2 * body.forearm.mass, 0, arms.wrist, arms.elbow, c.forearm},
        {2 * body.upper_arm.mass, 0, arms.elbow, arms.shoulder, c.upper_arm},
    }};
    std::array<JointLoad, 3> loads;
    solve_chain(links, loads);
    pose.elbow = loads[1].moment;
    pose.shoulder = -loads[2].moment;
    return pose;
}

} // namespace amentum
