#include "body_mechanics/inside/balance_root.h"
#include "body_mechanics/inside/closures.h"
#include "body_mechanics/inside/figure.h"
#include "body_mechanics/inverse_dynamics.h"
#include "body_mechanics/rear_share.h"

#include <numbers>

namespace amentum {
namespace {

constexpr double degree = std::numbers::pi / 180;
constexpr double laces_beyond_ankle = 0.10; // m, from the ankle to where the laces rest
constexpr double close_by = 10 * degree;    // around a posture already known
constexpr double rear_foot_pitch = 60 * degree;
constexpr double lowest_knee = 0.03;      // m, of the rear knee's centre over the floor
constexpr double ball_ahead_share = 0.47; // of the foot's length, from the ankle to the ball of the foot

// The rear foot: where it rests, and the far end of the two links that reach for it.
struct RearHold {
    Vector2 p_WR;   // laces on the pad, or the ball of the foot
    Vector2 p_WE;   // end of the lower link
    double lower;   // length of the lower link
    double floor_y; // of the rear side
};

RearHold rear_hold(const Body& body, const Setup& setup) {
    const double back = -setup.stance->metres();
    if (setup.lift == Lift::rear_foot_raised_split_squat) {
        const Vector2 R{back, setup.pad_height->metres()};
        return {R, R, body.shank.length + laces_beyond_ankle, 0};
    }
    const double floor_y = setup.box_height ? -setup.box_height->metres() : 0;
    const Vector2 ball{back, floor_y};
    const double ball_to_ankle = std::hypot(ball_ahead_share * body.foot_length, body.ankle_height);
    const Vector2 ankle =
        ball + ball_to_ankle * Vector2{-std::cos(rear_foot_pitch), std::sin(rear_foot_pitch)};
    return {ball, ankle, body.shank.length, floor_y};
}

struct RearLeg {
    Vector2 knee, ankle, hold, foot_centre;
};

// Seen from the hip, the knee lies on the left of the line to the foot: forward, since the foot is below. A foot that
// carries nothing need not reach: it hangs from a straight leg toward the place it left.
std::optional<RearLeg> reach_back(const Body& body, const RearHold& hold, Vector2 hip, bool may_hang) {
    const auto knee = two_link(hip, hold.p_WE, body.thigh.length, hold.lower);
    if (!knee && may_hang && length(hold.p_WE - hip) > hold.lower) {
        const Vector2 down = (1 / length(hold.p_WE - hip)) * (hold.p_WE - hip);
        const Vector2 hung = hip + body.thigh.length * down, ankle = hung + body.shank.length * down;
        const Vector2 ball = ankle + hold.p_WR - hold.p_WE;
        return RearLeg{hung, ankle, ball, 0.5 * (ankle + ball)};
    }
    if (!knee)
        return std::nullopt;
    const Vector2 ankle = *knee + (body.shank.length / hold.lower) * (hold.p_WE - *knee);
    return RearLeg{*knee, ankle, hold.p_WR, 0.5 * (ankle + hold.p_WR)};
}

Vector2 shank_centre(const Body& body, const RearLeg& leg) {
    return leg.knee + (body.shank.centre / body.shank.length) * (leg.ankle - leg.knee);
}
Vector2 thigh_centre(const Body& body, const RearLeg& leg, Vector2 hip) {
    return hip + (body.thigh.centre / body.thigh.length) * (leg.knee - hip);
}

class SplitStance {
public:
    SplitStance(const Body& body, const Setup& setup, std::optional<Inclinations> near)
        : body_(body), setup_(setup), near_(near), place_(hold_place(setup)), hold_(rear_hold(body, setup)),
          load_(trunk_load(body, setup, place_)),
          share_(setup.rear_share.value_or(rear_share_of(setup.lift)->share)),
          hangs_(share_ == 0 && setup.lift != Lift::rear_foot_raised_split_squat) {
        const double weight = (body.mass_of_parts() + setup.load.kilograms()) * lift_gravity;
        rear_force_ = {setup.rear_force_x.newtons(), share_ * weight};
        front_y_ = weight - rear_force_.y;
        target_ = setup.pressure_share * body.foot_length;
    }

    Result<Pose> solve() const {
        return setup_.thigh ? with_thigh(setup_.thigh->radians())
                            : with_clearance(setup_.clearance->metres());
    }

private:
    // Centre of pressure of the front foot beyond the one asked for.
    double pressure_miss(const Inclinations& a) const {
        const LegPoints lead = lead_leg_points(body_, a.shin, a.thigh);
        const auto rear = reach_back(body_, hold_, lead.hip, hangs_);
        if (!rear)
            return no_posture_here;
        const double mass_x = lead_leg_moment(body_, lead) + load_.mass * lead.hip.x + load_.moment(a.trunk) +
                              body_.foot_mass * rear->foot_centre.x +
                              body_.shank.mass * shank_centre(body_, *rear).x +
                              body_.thigh.mass * thigh_centre(body_, *rear, lead.hip).x;
        const double turning =
            lift_gravity * mass_x - hold_.p_WR.x * rear_force_.y + hold_.p_WR.y * rear_force_.x;
        return turning / front_y_ - target_;
    }

    BalanceRoot balanced(double thigh) const {
        const bool shin_free = setup_.trunk_lean.has_value();
        const auto miss = [&](double free) { return pressure_miss(angles(thigh, free)); };
        if (near_) {
            const double there = shin_free ? near_->shin : near_->trunk;
            if (const BalanceRoot root = find_balance(miss, there - close_by, there + close_by, 2); root.at)
                return root;
        }
        return find_balance(miss, -30 * degree, (shin_free ? 60 : 85) * degree, 6);
    }
    Inclinations angles(double thigh, double solved) const {
        return setup_.trunk_lean ? Inclinations{solved, thigh, setup_.trunk_lean->radians()}
                                 : Inclinations{setup_.shin_lean->radians(), thigh, solved};
    }

    Result<Pose> with_thigh(double thigh) const {
        const BalanceRoot root = balanced(thigh);
        if (root.at)
            return posed(angles(thigh, *root.at));
        if (!root.any_posture)
            return out_of_reach();
        const std::string where = root.nearest_miss > 0 ? "ahead of" : "behind";
        return refuse_posture(setup_.trunk_lean ? "trunk_lean" : "shin_lean",
                              "Balance cannot be met: in every posture the weight falls " + where +
                                  " the place under the front foot that was asked for.");
    }

    // Depth by the height of the rear knee: the thigh that brings it there.
    Result<Pose> with_clearance(double clearance) const {
        const auto knee_miss = [&](double thigh) {
            const BalanceRoot root = balanced(thigh);
            if (!root.at)
                return no_posture_here;
            const auto a = angles(thigh, *root.at);
            const auto rear = reach_back(body_, hold_, lead_leg_points(body_, a.shin, a.thigh).hip, hangs_);
            return rear ? rear->knee.y - hold_.floor_y - clearance : no_posture_here;
        };
        if (near_)
            if (const BalanceRoot depth =
                    find_balance(knee_miss, near_->thigh - close_by, near_->thigh + close_by, 2);
                depth.at)
                return with_thigh(*depth.at);
        const BalanceRoot depth = find_balance(knee_miss, 15 * degree, 120 * degree, 8);
        if (depth.at)
            return with_thigh(*depth.at);
        if (!depth.any_posture)
            return out_of_reach();
        return refuse_posture("clearance",
                              depth.nearest_miss > 0
                                  ? "The rear knee never comes that low in this stance."
                                  : "The rear knee is lower than that in every posture of this stance.");
    }

    Refusal out_of_reach() const {
        return refuse_posture("stance",
                              "The rear leg does not reach: no posture joins the hip to where the rear foot "
                              "rests. A shorter stance or a lower rest may.");
    }

    Result<Pose> posed(const Inclinations& a) const {
        Pose pose{setup_};
        pose.legs = 1;
        place_figure(pose, body_, a, place_);
        const Vector2 H = pose.at(Mark::hip);
        const auto rear = reach_back(body_, hold_, H, hangs_);
        if (!rear)
            return out_of_reach();
        pose.at(Mark::rear_hold) = rear->hold;
        pose.at(Mark::rear_ankle) = rear->ankle;
        pose.at(Mark::rear_knee) = rear->knee;
        pose.rear_share = share_;
        pose.rear = FootForce{rear_force_, rear->hold};
        pose.front = {{-rear_force_.x, front_y_}, {pressure_miss(a) + target_, 0}};
        pose.lead = lead_moments(body_, pose);
        pose.rear_leg = rear_moments(*rear, H);
        if (const auto beyond = beyond_any_body(pose))
            return *beyond;
        if (rear->knee.y - hold_.floor_y < lowest_knee)
            return refuse_posture(setup_.thigh ? "thigh" : "clearance",
                                  "The rear knee would be in the floor before this depth is reached.");
        return pose;
    }

    LegMoments rear_moments(const RearLeg& leg, Vector2 H) const {
        const std::array<ChainLink, 3> links{{
            {body_.foot_mass, 0, leg.hold, leg.ankle, leg.foot_centre, {0, 0}, 0, {rear_force_, leg.hold, 0}},
            {body_.shank.mass, 0, leg.ankle, leg.knee, shank_centre(body_, leg)},
            {body_.thigh.mass, 0, leg.knee, H, thigh_centre(body_, leg, H)},
        }};
        std::array<JointLoad, 3> loads;
        solve_chain(links, loads);
        return {-loads[0].moment, loads[1].moment, -loads[2].moment};
    }

    const Body& body_;
    const Setup& setup_;
    std::optional<Inclinations> near_; // a posture like the one looked for
    HoldPlace place_;
    RearHold hold_;
    TrunkLoad load_;
    double share_;
    bool hangs_; // the rear foot carries nothing
    Vector2 rear_force_;
    double front_y_;
    double target_;
};

} // namespace

Result<Pose> solve_split_stance(const Body& body, const Setup& setup) {
    return SplitStance(body, setup, std::nullopt).solve();
}

Result<Pose> solve_split_stance_near(const Body& body, const Setup& setup, const Pose& near) {
    return SplitStance(body, setup, Inclinations{near.shin, near.thigh, near.trunk}).solve();
}

} // namespace amentum
