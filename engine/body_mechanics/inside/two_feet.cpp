#include "body_mechanics/inside/balance_root.h"
#include "body_mechanics/inside/closures.h"
#include "body_mechanics/inside/figure.h"

#include <numbers>

namespace amentum {
namespace {

constexpr double degree = std::numbers::pi / 180;
constexpr double bar_ahead_of_leg = 0.04; // m, of the bar's centre, square to the line of shin or thigh

class TwoFeet {
public:
    TwoFeet(const Body& body, const Setup& setup)
        : body_(body), setup_(setup), place_(hold_place(setup)), load_(trunk_load(body, setup, place_)),
          arm_(body.arm_length()), mass_(body.mass_of_parts() + setup.load.kilograms()),
          target_(setup.pressure_share * body.foot_length) {}

    Result<Pose> solve_squat() const {
        const bool lean_known = setup_.trunk_lean.has_value();
        const auto at = [&](double free) -> Inclinations {
            const double shin = lean_known ? free : setup_.shin_lean->radians();
            const double thigh = setup_.thigh ? setup_.thigh->radians() : setup_.knee->radians() - shin;
            return {shin, thigh, lean_known ? setup_.trunk_lean->radians() : free};
        };
        const auto miss = [&](double free) {
            const auto a = at(free);
            return pressure_miss(a, trunk_moment(a.trunk));
        };
        const BalanceRoot root = find_balance(miss, -30 * degree, (lean_known ? 60 : 85) * degree, 12);
        if (!root.at)
            return out_of_balance(root, lean_known ? "trunk_lean" : "shin_lean");
        return posed(at(*root.at), std::nullopt);
    }

    Result<Pose> solve_pull() const {
        const auto miss = [&](double free) {
            const auto start = start_at(free);
            return start ? pressure_miss(start->angles, start->trunk_moment) : no_posture_here;
        };
        const double low = setup_.shin_lean ? 0 : -15 * degree, high = (setup_.shin_lean ? 150 : 60) * degree;
        const BalanceRoot root = find_balance(miss, low, high, 30);
        if (!root.any_posture)
            return refuse_posture("handle_height",
                                  "The arms do not reach: no posture of this body has the hands at "
                                  "that height.");
        if (!root.at)
            return out_of_balance(root, setup_.shin_lean ? "shin_lean" : "knee");
        const auto start = start_at(*root.at);
        return posed(start->angles, start->bar);
    }

private:
    struct Start { // of a pull
        Inclinations angles;
        double trunk_moment;        // sum of m (x - H.x) above the hips
        std::optional<Vector2> bar; // in the hands
    };

    double trunk_moment(double trunk) const { return load_.moment(trunk); }

    double pressure_miss(const Inclinations& a, double above_hips) const {
        const LegPoints lead = lead_leg_points(body_, a.shin, a.thigh);
        return (2 * lead_leg_moment(body_, lead) + load_.mass * lead.hip.x + above_hips) / mass_ - target_;
    }

    // free: the thigh when the shin is given, the shin when the knee is.
    std::optional<Start> start_at(double free) const {
        const double shin = setup_.shin_lean ? setup_.shin_lean->radians() : free;
        const double thigh = setup_.shin_lean ? free : setup_.knee->radians() - shin;
        const LegPoints lead = lead_leg_points(body_, shin, thigh);
        return setup_.hold == Hold::hex_bar ? hex_start(shin, thigh, lead) : bar_start(shin, thigh, lead);
    }

    std::optional<Start> hex_start(double shin, double thigh, const LegPoints& lead) const {
        const double cosine = (setup_.handle_height->metres() + arm_ - lead.hip.y) / body_.trunk.length;
        if (!(cosine >= 0 && cosine <= 1)) // a trunk no lower than level
            return std::nullopt;
        const double trunk = std::acos(cosine);
        return Start{{shin, thigh, trunk}, trunk_moment(trunk), std::nullopt};
    }

    std::optional<Start> bar_start(double shin, double thigh, const LegPoints& lead) const {
        const auto bar = bar_place(lead);
        if (!bar)
            return std::nullopt;
        const auto shoulder = two_link(lead.hip, *bar, body_.trunk.length, arm_);
        const auto other = two_link(*bar, lead.hip, arm_, body_.trunk.length);
        if (!shoulder)
            return std::nullopt;
        const Vector2 S = shoulder->y > other->y ? *shoulder : *other; // over the bar
        if (S.y < lead.hip.y)                                          // a trunk no lower than level
            return std::nullopt;
        const Vector2 HS = S - lead.hip, arms = (1 / arm_) * (*bar - S);
        const double ua = body_.upper_arm.centre, fa = body_.upper_arm.length + body_.forearm.centre;
        const double ha = body_.upper_arm.length + body_.forearm.length + body_.hand.centre;
        const double along_arms = body_.upper_arm.mass * ua + body_.forearm.mass * fa + body_.hand.mass * ha;
        const double moment = body_.trunk.mass * body_.trunk.centre / body_.trunk.length * HS.x +
                              2 * (body_.arm_mass() * HS.x + along_arms * arms.x) +
                              setup_.load.kilograms() * (bar->x - lead.hip.x);
        return Start{{shin, thigh, std::atan2(HS.x, HS.y)}, moment, bar};
    }

    // On the front of the shin, or of the thigh when it is higher than the knee.
    std::optional<Vector2> bar_place(const LegPoints& lead) const {
        const double height = setup_.handle_height->metres();
        const Vector2 A{0, body_.ankle_height};
        const auto [from, to] =
            height <= lead.knee.y ? std::pair{A, lead.knee} : std::pair{lead.knee, lead.hip};
        const Vector2 line = to - from;
        if (!(line.y > 0.05) || height < from.y || height > to.y)
            return std::nullopt;
        const double along = (height - from.y) / line.y;
        return Vector2{from.x + along * line.x + bar_ahead_of_leg * length(line) / line.y, height};
    }

    Refusal out_of_balance(const BalanceRoot& root, const char* field) const {
        if (!root.any_posture)
            return refuse_posture(field, "No posture of this body goes with these settings.");
        const std::string where = root.nearest_miss > 0 ? "ahead of" : "behind";
        return refuse_posture(field, "Balance cannot be met: in every posture the weight falls " + where +
                                         " the place under the feet that was asked for.");
    }

    Result<Pose> posed(const Inclinations& angles, const std::optional<Vector2>& bar) const {
        Pose pose{setup_};
        pose.legs = 2;
        if (bar)
            pose.at(Mark::load) = *bar;
        place_figure(pose, body_, angles, place_);
        double moment = 2 * lead_leg_moment(body_, {pose.at(Mark::knee), pose.at(Mark::hip)});
        for (const auto& [mass, p_WC] : pose.above_hips)
            moment += mass * p_WC.x;
        pose.front = {{0, mass_ * lift_gravity}, {moment / mass_, 0}};
        pose.lead = lead_moments(body_, pose);
        if (const auto beyond = beyond_any_body(pose))
            return *beyond;
        return pose;
    }

    const Body& body_;
    const Setup& setup_;
    HoldPlace place_;
    TrunkLoad load_;
    double arm_;
    double mass_;
    double target_;
};

} // namespace

Result<Pose> solve_two_feet(const Body& body, const Setup& setup) {
    const TwoFeet feet(body, setup);
    const bool pull = setup.lift == Lift::hex_bar_deadlift || setup.lift == Lift::straight_bar_deadlift;
    return pull ? feet.solve_pull() : feet.solve_squat();
}

} // namespace amentum
