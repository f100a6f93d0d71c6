#include "body_mechanics/ball_throw.h"

#include "body_mechanics/chain_motion.h"

#include <cmath>
#include <numbers>

namespace amentum {
namespace {

constexpr double degree = std::numbers::pi / 180;
constexpr double fastest = 2000, hardest = 60000; // deg/s, deg/s2 (proposals)

// The links from the base up; the last one is the hands with the ball, in line with the forearms.
std::vector<MovingLink> links_of(const Body& body, const OverheadThrow& thrown) {
    const auto moved = [](double length, double mass, double centre, double inertia,
                          const LinkMotion& motion) {
        return MovingLink{length,
                          mass,
                          centre,
                          inertia,
                          motion.inclination.radians(),
                          motion.rate * degree,
                          motion.acceleration * degree};
    };
    // Two limbs side by side. Legs count their centre from the joint above, here from the joint below.
    const auto leg = [&](const BodyLink& link, const LinkMotion& motion) {
        return moved(link.length, 2 * link.mass, link.length - link.centre, 2 * link.inertia, motion);
    };
    const auto arm = [&](const BodyLink& link, const LinkMotion& motion) {
        return moved(link.length, 2 * link.mass, link.centre, 2 * link.inertia, motion);
    };
    std::vector<MovingLink> links;
    if (thrown.stance == ThrowStance::standing)
        links.push_back(leg(body.shank, *thrown.shank));
    links.push_back(leg(body.thigh, thrown.thigh));
    links.push_back(
        moved(body.trunk.length, body.trunk.mass, body.trunk.centre, body.trunk.inertia, thrown.trunk));
    links.push_back(arm(body.upper_arm, thrown.upper_arm));
    links.push_back(arm(body.forearm, thrown.forearm));
    const double hands = 2 * body.hand.mass, ball = thrown.ball.kilograms(), all = hands + ball;
    const double centre = (hands * body.hand.centre + ball * body.hand.length) / all;
    const double from_hands = body.hand.centre - centre, from_ball = body.hand.length - centre;
    links.push_back(
        moved(body.hand.length, all, centre,
              2 * body.hand.inertia + hands * from_hands * from_hands + ball * from_ball * from_ball,
              thrown.forearm));
    return links;
}

struct Solved {
    ThrowMoments moments;
    Vector2 base_force;
};

Solved solve_links(const std::vector<MovingLink>& links) {
    std::vector<JointLoad> loads(links.size());
    solve_moving_chain({}, links, loads);
    // From the base: [ankle,] knee, hip, shoulder, elbow, wrist. Forward is clockwise.
    const std::size_t knee = links.size() - 5;
    Solved solved{
        {-loads[knee + 3].moment, -loads[knee + 2].moment, -loads[knee + 1].moment, -loads[knee].moment, {}},
        loads.front().force};
    if (knee == 1)
        solved.moments.ankle = -loads.front().moment;
    return solved;
}

std::vector<MovingLink> held_still(std::vector<MovingLink> links) {
    for (auto& link : links)
        link.omega = link.alpha = 0;
    return links;
}

// What one number moved by its error adds to the variance of each moment.
void add_half_difference(const Body& body, const OverheadThrow& less, const OverheadThrow& more,
                         ThrowMoments& variance) {
    const ThrowMoments a = solve_links(links_of(body, less)).moments,
                       b = solve_links(links_of(body, more)).moments;
    const auto square = [](double low, double high) { return (high - low) * (high - low) / 4; };
    variance.elbow += square(a.elbow, b.elbow);
    variance.shoulder += square(a.shoulder, b.shoulder);
    variance.hip += square(a.hip, b.hip);
    variance.knee += square(a.knee, b.knee);
    if (variance.ankle)
        *variance.ankle += square(*a.ankle, *b.ankle);
}

using Moved = void (*)(const OverheadThrow&, LinkMotion&, double);
constexpr std::array<Moved, 3> error_moves{
    [](const OverheadThrow& by, LinkMotion& motion, double sign) {
        motion.inclination = motion.inclination + sign * by.angle_error;
    },
    [](const OverheadThrow& by, LinkMotion& motion, double sign) {
        motion.rate *= 1 + sign * by.rate_error_share;
    },
    [](const OverheadThrow& by, LinkMotion& motion, double sign) {
        motion.acceleration *= 1 + sign * by.acceleration_error_share;
    },
};

ThrowMoments errors_of(const Body& body, const OverheadThrow& thrown) {
    ThrowMoments variance{0, 0, 0, 0, thrown.shank ? std::optional<double>(0) : std::nullopt};
    const auto add_link = [&](auto link) { // of the throw given
        for (const Moved move : error_moves) {
            OverheadThrow less = thrown, more = thrown;
            move(thrown, link(less), -1);
            move(thrown, link(more), 1);
            add_half_difference(body, less, more, variance);
        }
    };
    if (thrown.shank)
        add_link([](OverheadThrow& t) -> LinkMotion& { return *t.shank; });
    add_link([](OverheadThrow& t) -> LinkMotion& { return t.thigh; });
    add_link([](OverheadThrow& t) -> LinkMotion& { return t.trunk; });
    add_link([](OverheadThrow& t) -> LinkMotion& { return t.upper_arm; });
    add_link([](OverheadThrow& t) -> LinkMotion& { return t.forearm; });
    ThrowMoments error{std::sqrt(variance.elbow),
                       std::sqrt(variance.shoulder),
                       std::sqrt(variance.hip),
                       std::sqrt(variance.knee),
                       {}};
    if (variance.ankle)
        error.ankle = std::sqrt(*variance.ankle);
    return error;
}

Result<Done> check_motion(const char* name, const LinkMotion& motion) {
    const auto inside = [&](const char* what, double value, double low, double high,
                            const char* unit) -> Result<Done> {
        if (!(value >= low && value <= high))
            return refuse_range(std::string(name) + what, value, low, high, unit);
        return Done{};
    };
    if (auto r = inside("", motion.inclination.degrees(), -180, 360, "degrees"); !r)
        return r;
    if (auto r = inside("_rate", motion.rate, -fastest, fastest, "deg/s"); !r)
        return r;
    return inside("_acceleration", motion.acceleration, -hardest, hardest, "deg/s2");
}

Result<Done> check_throw(const OverheadThrow& thrown) {
    if (!(thrown.ball >= Mass::kilograms(0.05) && thrown.ball <= Mass::kilograms(10)))
        return refuse_range("ball", thrown.ball.kilograms(), 0.05, 10, "kg");
    if (thrown.stance == ThrowStance::standing && !thrown.shank)
        return refuse_missing("shank", "its inclination; a standing throw turns about the ankles");
    if (thrown.stance == ThrowStance::kneeling && thrown.shank)
        return Refusal{RefusalCode::method_does_not_apply,
                       "A kneeling throw turns about the knees; the shank lies still.", "shank", "",
                       "left out"};
    if (thrown.shank)
        if (auto r = check_motion("shank", *thrown.shank); !r)
            return r;
    if (auto r = check_motion("thigh", thrown.thigh); !r)
        return r;
    if (auto r = check_motion("trunk", thrown.trunk); !r)
        return r;
    if (auto r = check_motion("upper_arm", thrown.upper_arm); !r)
        return r;
    return check_motion("forearm", thrown.forearm);
}

std::vector<std::string> warnings_of(const OverheadThrow& thrown, bool moves) {
    std::vector<std::string> warnings;
    const double pounds = thrown.ball.pounds();
    constexpr double rounding = 0.01;
    if (pounds > 8 + rounding)
        warnings.push_back(
            "A ball above 8 lb is not thrown overhead for speed (common practice, no source).");
    else if (thrown.stance == ThrowStance::kneeling && (pounds < 4 - rounding || pounds > 6 + rounding))
        warnings.push_back(
            "Kneeling throws use 4 to 6 lb, 8 at most, because speed is the point (common practice, no "
            "source).");
    if (!moves)
        warnings.push_back("No rate and no acceleration is given: this is the posture held still.");
    return warnings;
}

} // namespace

Result<ThrowLoads> measure_ball_throw(const Body& body, const OverheadThrow& thrown) {
    if (const auto checked = check_throw(thrown); !checked)
        return checked.refusal();
    const auto links = links_of(body, thrown);
    const Vector2 base{0, thrown.stance == ThrowStance::standing ? body.ankle_height : 0};
    const Solved moving = solve_links(links), still = solve_links(held_still(links));

    ThrowLoads loads{moving.moments, errors_of(body, thrown), still.moments, {0, 0},
                     {0, 0},         moving.base_force,       {base},        {}};
    bool moves = false;
    for (const auto& link : links) {
        const Vector2 along{std::cos(link.phi), std::sin(link.phi)}, across{-along.y, along.x};
        loads.ball_velocity = loads.ball_velocity + link.length * link.omega * across;
        loads.ball_acceleration =
            loads.ball_acceleration + link.length * (link.alpha * across - link.omega * link.omega * along);
        loads.points.push_back(loads.points.back() + link.length * along);
        moves = moves || link.omega != 0 || link.alpha != 0;
    }
    loads.warnings = warnings_of(thrown, moves);
    return loads;
}

} // namespace amentum
