#include "body_mechanics/check_pose.h"

#include "body_mechanics/holds.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace amentum {
namespace {

constexpr double turn = 1e-3; // rad, of a virtual displacement

Vector2 between(Vector2 from, Vector2 to, double share) {
    return from + share * (to - from);
}

// Weights of all parts, gathered from the points of the pose alone.
std::vector<Weight> weights_of(const Body& body, const Pose& pose) {
    std::vector<Weight> all(pose.above_hips.begin(), pose.above_hips.end());
    if (pose.setup.lift == Lift::pull_up)
        return all; // the legs hang among them
    const double thigh = body.thigh.centre / body.thigh.length, shank = body.shank.centre / body.shank.length;
    const auto add_leg = [&](double legs, Vector2 hip, Vector2 knee, Vector2 ankle, Vector2 foot) {
        all.push_back({legs * body.thigh.mass, between(hip, knee, thigh)});
        all.push_back({legs * body.shank.mass, between(knee, ankle, shank)});
        all.push_back({legs * body.foot_mass, foot});
    };
    const Vector2 ankle = pose.at(Mark::ankle);
    add_leg(pose.legs, pose.at(Mark::hip), pose.at(Mark::knee), ankle, ankle + body.foot_centre);
    if (pose.rear)
        add_leg(1, pose.at(Mark::hip), pose.at(Mark::rear_knee), pose.at(Mark::rear_ankle),
                between(pose.at(Mark::rear_ankle), pose.at(Mark::rear_hold), 0.5));
    return all;
}

// Derivative at 0 by five points: its error is h^4 / 30 of the fifth derivative.
template <class F>
double slope_at_zero(F f) {
    return (f(-2 * turn) - 8 * f(-turn) + 8 * f(turn) - f(2 * turn)) / (12 * turn);
}

// Potential energy of lead leg and all above the hips for other angles, the rear leg's pull on the hips counted as a force
// from outside. What is above the hips turns with the trunk.
class Potential {
public:
    Potential(const Body& body, const Pose& pose) : body_(body), pose_(pose) {
        if (pose.rear)
            rear_on_hip_ = pose.rear->force - Vector2{0, body.leg_mass() * lift_gravity};
    }
    double operator()(double shin, double thigh, double trunk) const {
        const double s = pose_.shin + shin, t = pose_.thigh + thigh;
        const Vector2 A{0, body_.ankle_height};
        const Vector2 K = A + body_.shank.length * Vector2{std::sin(s), std::cos(s)};
        const Vector2 H = K + body_.thigh.length * Vector2{-std::sin(t), std::cos(t)};
        const double legs = pose_.legs;
        double energy = legs * lift_gravity *
                        (body_.shank.mass * between(K, A, body_.shank.centre / body_.shank.length).y +
                         body_.thigh.mass * between(H, K, body_.thigh.centre / body_.thigh.length).y);
        for (const auto& [mass, p_WC] : pose_.above_hips) {
            const Vector2 p_HC = p_WC - pose_.at(Mark::hip); // a lean more turns it clockwise
            energy += mass * lift_gravity * (H.y - std::sin(trunk) * p_HC.x + std::cos(trunk) * p_HC.y);
        }
        return energy - dot(rear_on_hip_, H);
    }

private:
    const Body& body_;
    const Pose& pose_;
    Vector2 rear_on_hip_{0, 0};
};

double reach_error(const Body& body, const Pose& pose) {
    double worst = 0;
    const auto link = [&](Mark a, Mark b, double expected) {
        worst = std::max(worst, std::abs(length(pose.at(b) - pose.at(a)) - expected));
    };
    link(Mark::ankle, Mark::knee, body.shank.length);
    link(Mark::knee, Mark::hip, body.thigh.length);
    link(Mark::hip, Mark::shoulder, body.trunk.length);
    if (pose.rear) {
        link(Mark::hip, Mark::rear_knee, body.thigh.length);
        link(Mark::rear_knee, Mark::rear_ankle, body.shank.length);
    }
    if (pose.setup.lift == Lift::pull_up || hold_place(pose.setup).arms != ArmsAt::trunk) {
        link(Mark::shoulder, Mark::elbow, body.upper_arm.length);
        link(Mark::elbow, Mark::wrist, body.forearm.length);
        link(Mark::wrist, Mark::grip, body.hand.length);
    }
    return worst;
}

// Forearms turned about the bar, upper arms and body moved along without turning: the elbows bend by the same angle.
double elbow_work(const Body& body, const Pose& pose) {
    const double bent = 2 * lift_gravity * (body.forearm.mass + body.hand.mass);
    const double carried = pose.front.force.y - bent;
    const double elbow = body.forearm.length + body.hand.length; // from the grip
    const double centre = elbow - (body.forearm.mass * body.forearm.centre +
                                   body.hand.mass * (body.forearm.length + body.hand.centre)) /
                                      (body.forearm.mass + body.hand.mass);
    return slope_at_zero(
        [&](double more) { return -std::cos(pose.forearm + more) * (carried * elbow + bent * centre); });
}

} // namespace

PoseResiduals check_pose(const Body& body, const Pose& pose) {
    PoseResiduals left{0, 0, 0, 0, 0, 0, reach_error(body, pose), true, true};
    Vector2 force = pose.front.force + (pose.rear ? pose.rear->force : Vector2{0, 0});
    double turning = pose.rear ? cross(pose.rear->p_WP - pose.front.p_WP, pose.rear->force) : 0;
    for (const auto& [mass, p_WC] : weights_of(body, pose)) {
        const Vector2 weight{0, -mass * lift_gravity};
        force = force + weight;
        turning += cross(p_WC - pose.front.p_WP, weight);
    }
    left.force = length(force);
    left.balance = std::abs(turning);
    if (!pose.lead) {
        left.thigh_work = std::abs(pose.elbow - elbow_work(body, pose));
        return left;
    }
    const double hips = pose.lead->hip + (pose.rear_leg ? pose.rear_leg->hip : 0);
    double above = 0;
    for (const auto& [mass, p_WC] : pose.above_hips)
        above += mass * lift_gravity * (p_WC.x - pose.at(Mark::hip).x);
    left.hips = std::abs(hips - above);
    const Potential energy(body, pose);
    left.trunk_work = std::abs(hips + slope_at_zero([&](double x) { return energy(0, 0, x); }));
    left.thigh_work =
        std::abs(pose.lead->hip + pose.lead->knee + slope_at_zero([&](double x) { return energy(0, x, 0); }));
    left.shin_work = std::abs(pose.lead->knee + pose.lead->ankle +
                              slope_at_zero([&](double x) { return energy(x, 0, 0); }));
    constexpr double slack = 1e-9;
    left.pressure_inside_foot =
        pose.front.p_WP.x >= body.heel() - slack && pose.front.p_WP.x <= body.toe() + slack;
    left.rear_foot_pushes = !pose.rear || pose.rear->force.y >= 0;
    return left;
}

} // namespace amentum
