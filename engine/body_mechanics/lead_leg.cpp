#include "body_mechanics/lead_leg.h"

#include "body_mechanics/inside/figure.h"
#include "body_mechanics/inverse_dynamics.h"

#include <cmath>
#include <functional>

namespace amentum {
namespace {

struct Leg {
    LegMoments moments;
    LegPoints points;
};

Leg leg_at(const Body& body, const LandingInstant& now) {
    const LegPoints points = lead_leg_points(body, now.shin.radians(), now.thigh.radians());
    const auto [K, H] = points;
    const Vector2 A{0, body.ankle_height}, P{now.pressure_ahead.metres(), 0};
    const double shank = 1 - body.shank.centre / body.shank.length,
                 thigh = body.thigh.centre / body.thigh.length;
    std::array<ChainLink, 3> links{{
        {body.foot_mass, body.foot_inertia, P, A, A + body.foot_centre},
        {body.shank.mass, body.shank.inertia, A, K, A + shank * (K - A)},
        {body.thigh.mass, body.thigh.inertia, K, H, H + thigh * (K - H)},
    }};
    links[0].external = {{now.force_x.newtons(), now.force_y.newtons()}, P, 0};
    const std::array motions{now.foot, now.shank, now.thigh_acceleration};
    for (std::size_t i = 0; i < links.size(); ++i)
        if (motions[i]) {
            links[i].a_WC = motions[i]->centre;
            links[i].alpha = motions[i]->turning;
        }
    std::array<JointLoad, 3> loads;
    solve_chain(links, loads);
    return {{-loads[0].moment, loads[1].moment, -loads[2].moment}, points};
}

Result<Done> check_instant(const Body& body, const LandingInstant& now) {
    const double weight = body.mass() * lift_gravity;
    const auto inside = [](const char* field, double value, double low, double high,
                           const char* unit) -> Result<Done> {
        if (!(value >= low && value <= high))
            return refuse_range(field, value, low, high, unit);
        return Done{};
    };
    if (auto r = inside("force_x", now.force_x.newtons() / weight, -3, 3, "body weights"); !r)
        return r;
    if (auto r = inside("force_y", now.force_y.newtons() / weight, 0, 5, "body weights"); !r)
        return r;
    if (auto r = inside("pressure", now.pressure_ahead.metres(), body.heel(), body.toe(), "m"); !r)
        return r;
    if (auto r = inside("shin_lean", now.shin.degrees(), -60, 80, "degrees"); !r)
        return r;
    if (auto r = inside("thigh", now.thigh.degrees(), -45, 120, "degrees"); !r)
        return r;
    if (auto r = inside("angle_error", now.angle_error.degrees(), 0, 20, "degrees"); !r)
        return r;
    if (auto r = inside("knee (shin lean and thigh together)", now.shin.degrees() + now.thigh.degrees(), -10,
                        150, "degrees");
        !r)
        return r;
    const int known = now.foot.has_value() + now.shank.has_value() + now.thigh_acceleration.has_value();
    if (known != 0 && known != 3)
        return refuse_missing("accelerations", "those of foot, shank and thigh, or none of them");
    return Done{};
}

// One number moved by its error both ways: half the difference of the moments.
using Move = std::function<void(LandingInstant&, double)>;

LegMoments half_difference(const Body& body, const LandingInstant& now, const Move& move) {
    LandingInstant more = now, less = now;
    move(more, 1);
    move(less, -1);
    const LegMoments a = leg_at(body, less).moments, b = leg_at(body, more).moments;
    return {(b.ankle - a.ankle) / 2, (b.knee - a.knee) / 2, (b.hip - a.hip) / 2};
}

std::vector<std::string> warnings_of(const LandingInstant& now, bool moving) {
    std::vector<std::string> warnings;
    if (!moving)
        warnings.push_back(
            "Accelerations are left out: this is the leg held still under that force. At an impact they "
            "matter, most at the hip.");
    if (now.force_x.newtons() > 0)
        warnings.push_back(
            "The level force pushes forward. A lead leg brakes: its force points backward, below 0.");
    return warnings;
}

} // namespace

Result<LeadLegLoads> measure_lead_leg(const Body& body, const LandingInstant& instant) {
    if (const auto checked = check_instant(body, instant); !checked)
        return checked.refusal();
    const Leg leg = leg_at(body, instant);
    const std::array<Move, 5> moves{
        [](LandingInstant& at, double sign) { at.shin = at.shin + sign * at.angle_error; },
        [](LandingInstant& at, double sign) { at.thigh = at.thigh + sign * at.angle_error; },
        [](LandingInstant& at, double sign) {
            at.pressure_ahead = at.pressure_ahead + sign * at.pressure_error;
        },
        [](LandingInstant& at, double sign) { at.force_x = at.force_x * (1 + sign * at.force_error_share); },
        [](LandingInstant& at, double sign) { at.force_y = at.force_y * (1 + sign * at.force_error_share); },
    };
    LegMoments variance{0, 0, 0};
    for (const Move& move : moves) {
        const LegMoments d = half_difference(body, instant, move);
        variance = {variance.ankle + d.ankle * d.ankle, variance.knee + d.knee * d.knee,
                    variance.hip + d.hip * d.hip};
    }
    const double weight = body.mass() * lift_gravity;
    const bool moving = instant.foot.has_value();
    return LeadLegLoads{{leg.moments.ankle, std::sqrt(variance.ankle)},
                        {leg.moments.knee, std::sqrt(variance.knee)},
                        {leg.moments.hip, std::sqrt(variance.hip)},
                        moving,
                        instant.force_y.newtons() / weight,
                        instant.force_x.newtons() / weight,
                        instant.shin + instant.thigh,
                        {Vector2{body.heel(), 0}, Vector2{body.toe(), 0}, Vector2{0, body.ankle_height},
                         leg.points.knee, leg.points.hip},
                        warnings_of(instant, moving)};
}

} // namespace amentum
