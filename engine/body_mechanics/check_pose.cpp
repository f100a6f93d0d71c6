#include "body_mechanics/check_pose.h"

#include "body_mechanics/inside/parts_of_pose.h"

#include "body_mechanics/holds.h"

#include <cmath>

namespace amentum {
namespace {

constexpr double turn = 1e-3; // rad, of a virtual displacement

// Keeps what is no number, which std::max would pass over.
double larger(double a, double b) {
    return std::isnan(a) || a > b ? a : b;
}

Vector2 turned_clockwise(Vector2 a, double angle) {
    return {std::cos(angle) * a.x + std::sin(angle) * a.y, -std::sin(angle) * a.x + std::cos(angle) * a.y};
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
    Potential(const Body& body, const Pose& pose, const std::vector<Weight>& above)
        : body_(body), pose_(pose), above_(above) {
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
                        (body_.shank.mass * centre_between(K, A, body_.shank).y +
                         body_.thigh.mass * centre_between(H, K, body_.thigh).y);
        for (const auto& [mass, p_WC] : above_)
            energy += mass * lift_gravity * (H + turned_clockwise(p_WC - pose_.at(Mark::hip), trunk)).y;
        return energy - dot(rear_on_hip_, H);
    }

private:
    const Body& body_;
    const Pose& pose_;
    const std::vector<Weight>& above_;
    Vector2 rear_on_hip_{0, 0};
};

// Work of a clockwise turn of the first `links` of the rear leg, from its foot up, about `joint`; the force under the
// foot moves along.
double rear_turn(const Body& body, const Pose& pose, std::size_t links, Vector2 joint) {
    const auto parts = leg_parts(body, 1, rear_leg_points(pose)); // thigh, shank, foot
    return slope_at_zero([&](double angle) {
        double energy = -dot(pose.rear->force, joint + turned_clockwise(pose.rear->p_WP - joint, angle));
        for (std::size_t i = parts.size() - links; i < parts.size(); ++i)
            energy +=
                parts[i].mass * lift_gravity * (joint + turned_clockwise(parts[i].p_WC - joint, angle)).y;
        return energy;
    });
}

// Plantar flexion and hip extension turn what is beyond them clockwise, knee extension the other way.
double rear_work(const Body& body, const Pose& pose) {
    const double ankle = rear_turn(body, pose, 1, pose.at(Mark::rear_ankle));
    const double knee = -rear_turn(body, pose, 2, pose.at(Mark::rear_knee));
    const double hip = rear_turn(body, pose, 3, pose.at(Mark::hip));
    return larger(larger(std::abs(pose.rear_leg->ankle - ankle), std::abs(pose.rear_leg->knee - knee)),
                  std::abs(pose.rear_leg->hip - hip));
}

double reach_error(const Body& body, const Pose& pose) {
    double worst = 0;
    const auto link = [&](Mark a, Mark b, double expected) {
        worst = larger(worst, std::abs(length(pose.at(b) - pose.at(a)) - expected));
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

double weights_error(const Pose& pose, const std::vector<Weight>& own) {
    double mass = 0;
    Vector2 moment{0, 0}; // sum of m (p - H)
    const auto add = [&](double sign, const Weight& weight) {
        mass += sign * weight.mass;
        moment = moment + sign * weight.mass * (weight.p_WC - pose.at(Mark::hip));
    };
    for (const Weight& weight : pose.above_hips)
        add(1, weight);
    for (const Weight& weight : own)
        add(-1, weight);
    return lift_gravity * larger(std::abs(mass), length(moment));
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

// sum of m g (x - joint.x)
double moment_about(Vector2 joint, std::span<const Weight> weights) {
    double moment = 0;
    for (const auto& [mass, p_WC] : weights)
        moment += mass * lift_gravity * (p_WC.x - joint.x);
    return moment;
}

void check_balance(PoseResiduals& left, const Pose& pose, const std::vector<Weight>& all) {
    Vector2 force = pose.front.force + (pose.rear ? pose.rear->force : Vector2{0, 0});
    double turning = pose.rear ? cross(pose.rear->p_WP - pose.front.p_WP, pose.rear->force) : 0;
    for (const auto& [mass, p_WC] : all)
        force.y -= mass * lift_gravity;
    turning -= moment_about(pose.front.p_WP, all);
    left.force = length(force);
    left.balance = std::abs(turning);
}

void check_leg_work(PoseResiduals& left, const Body& body, const Pose& pose,
                    const std::vector<Weight>& above) {
    const double hips = pose.lead->hip + (pose.rear_leg ? pose.rear_leg->hip : 0);
    const Potential energy(body, pose, above);
    left.hips = std::abs(hips - moment_about(pose.at(Mark::hip), above));
    left.trunk_work = std::abs(hips + slope_at_zero([&](double x) { return energy(0, 0, x); }));
    left.thigh_work =
        std::abs(pose.lead->hip + pose.lead->knee + slope_at_zero([&](double x) { return energy(0, x, 0); }));
    left.shin_work = std::abs(pose.lead->knee + pose.lead->ankle +
                              slope_at_zero([&](double x) { return energy(x, 0, 0); }));
    if (pose.rear_leg)
        left.rear_work = rear_work(body, pose);
}

} // namespace

double PoseResiduals::worst() const {
    double most = 0;
    for (const double one :
         {force, balance, hips, trunk_work, thigh_work, shin_work, rear_work, weights, reach})
        most = larger(most, one);
    return most;
}

PoseResiduals check_pose(const Body& body, const Pose& pose) {
    PoseResiduals left{0, 0, 0, 0, 0, 0, 0, 0, reach_error(body, pose), true, true};
    const auto above = parts_on_hips(body, pose);
    left.weights = weights_error(pose, above);
    check_balance(left, pose, all_parts(body, pose, above));
    if (!pose.lead) {
        left.thigh_work = std::abs(pose.elbow - elbow_work(body, pose));
        left.hips = std::abs(pose.shoulder -
                             moment_about(pose.at(Mark::shoulder), parts_below_shoulders(body, pose)));
        return left;
    }
    check_leg_work(left, body, pose, above);
    constexpr double slack = 1e-9;
    left.pressure_inside_foot =
        pose.front.p_WP.x >= body.heel() - slack && pose.front.p_WP.x <= body.toe() + slack;
    left.rear_foot_pushes = !pose.rear || pose.rear->force.y >= 0;
    return left;
}

} // namespace amentum
