// Chains whose joint forces and moments can be written down with a pencil; each derivation stands above its check.
#include "body_mechanics/chain_motion.h"

#include <doctest/doctest.h>

#include <numbers>
#include <vector>

using namespace amentum;

namespace {

constexpr double g = lift_gravity;
constexpr Vector2 weightless{0, 0};

// The loads in the order of the answer: the free end's joint first, the base last.
std::vector<JointLoad> loads_of(const std::vector<ChainLink>& chain, Vector2 gravity = {0, -g}) {
    std::vector<JointLoad> loads(chain.size());
    solve_chain(chain, loads, gravity);
    return loads;
}

std::vector<ChainLink> moved(const std::vector<MovingLink>& links, MovingBase base = {}) {
    std::vector<ChainLink> chain(links.size());
    move_chain(base, links, chain);
    return chain;
}

// A uniform rod: centre in the middle, m L^2 / 12 about it.
MovingLink rod(double length, double mass, double phi, double omega = 0, double alpha = 0) {
    return {length, mass, length / 2, mass * length * length / 12, phi, omega, alpha};
}

void check(Vector2 is, Vector2 wanted) {
    CHECK(std::abs(is.x - wanted.x) < 1e-10);
    CHECK(std::abs(is.y - wanted.y) < 1e-10);
}

void check(double is, double wanted) {
    CHECK(std::abs(is - wanted) < 1e-10);
}

} // namespace

TEST_CASE("a level rod of 10 kg and 1 m held at one end: its weight, and its weight at half a metre") {
    const auto loads = loads_of(moved({rod(1, 10, 0)}));
    check(loads[0].force, {0, 98.0665});
    check(loads[0].moment, 49.03325);
    // Held from the other side, the weight pulls the other way round.
    check(loads_of(moved({rod(1, 10, std::numbers::pi)}))[0].moment, -49.03325);
}

TEST_CASE("a stack of upright rods carries the weight above each joint, and no moment") {
    const auto loads = loads_of(moved({rod(0.5, 3, std::numbers::pi / 2), rod(0.4, 2, std::numbers::pi / 2),
                                       rod(0.3, 1, std::numbers::pi / 2)}));
    for (const auto& [joint, above] : {std::pair{0u, 1.0}, {1u, 3.0}, {2u, 6.0}}) {
        check(loads[joint].force, {0, above * g});
        check(loads[joint].moment, 0);
    }
}

// Released level and hinged without friction: I_P alpha = -m g L / 2 with I_P = m L^2 / 3, so alpha = -3 g / (2 L), the
// centre falls with 3 g / 4, and the hinge carries a quarter of the weight and no moment.
TEST_CASE("a hinged rod let go from level: a quarter of its weight at the hinge") {
    const auto loads = loads_of(moved({rod(0.8, 5, 0, 0, -3 * g / (2 * 0.8))}));
    check(loads[0].force, {0, 5 * g / 4});
    check(loads[0].moment, 0);
}

// The same rod when it hangs: half of I_P omega^2 is the lost m g L / 2, so omega^2 = 3 g / L; the centre is pulled up with
// omega^2 L / 2 = 3 g / 2, and the hinge carries five halves of the weight.
TEST_CASE("the same rod at the bottom of its swing: five halves of its weight") {
    const auto loads = loads_of(moved({rod(0.8, 5, -std::numbers::pi / 2, -std::sqrt(3 * g / 0.8))}));
    check(loads[0].force, {0, 5 * g * 5 / 2});
    check(loads[0].moment, 0);
}

// Falling free, a_WC = g of every part: nothing acts between the parts, however they are bent.
TEST_CASE("a bent chain in free fall has no joint force and no joint moment") {
    const auto loads =
        loads_of(moved({rod(0.4, 7, 1.9), rod(0.5, 11, 0.3), rod(0.6, 50, 1.2)}, {{0.2, 3}, {0, -g}}));
    for (const auto& load : loads) {
        check(load.force, {0, 0});
        check(load.moment, 0);
    }
}

// In a lift that accelerates upward with a, weights are m (g + a), and so are all forces and moments.
TEST_CASE("a base that accelerates upward with g / 2 makes every load half as heavy again") {
    const std::vector<MovingLink> links{rod(0.4, 7, 1.9), rod(0.5, 11, 0.3), rod(0.6, 50, 1.2)};
    const auto still = loads_of(moved(links)), lifted = loads_of(moved(links, {{0, 0}, {0, g / 2}}));
    for (std::size_t i = 0; i < links.size(); ++i) {
        check(lifted[i].force, 1.5 * still[i].force);
        CHECK(lifted[i].moment == doctest::Approx(1.5 * still[i].moment).epsilon(1e-12));
    }
}

// A uniform rod turning about its end without weight: what lies beyond r, m (L - r) / L with its centre at (L + r) / 2,
// is pulled inward with m omega^2 (L^2 - r^2) / (2 L), whatever the rod is cut into.
TEST_CASE("a spinning rod in three pieces: the inward pull at each cut") {
    const double phi = 0.7, omega = -4, length = 1.2, mass = 6;
    const auto loads = loads_of(
        moved({rod(0.6, 3, phi, omega), rod(0.4, 2, phi, omega), rod(0.2, 1, phi, omega)}), weightless);
    const Vector2 inward{-std::cos(phi), -std::sin(phi)};
    for (const auto& [joint, cut] : {std::pair{0u, 1.0}, {1u, 0.6}, {2u, 0.0}}) {
        const double pull = mass * omega * omega * (length * length - cut * cut) / (2 * length);
        check(loads[joint].force, pull * inward);
        check(loads[joint].moment, 0);
    }
}

// Without weight, about the fixed end: M = m L^2 / 3 alpha; the centre accelerates across with alpha L / 2.
TEST_CASE("a rod set turning about its end: a third of m L^2 for each rad/s2") {
    const auto loads = loads_of(moved({rod(0.9, 4, 0.4, 0, 25)}), weightless);
    check(loads[0].moment, 4 * 0.9 * 0.9 / 3 * 25);
    check(loads[0].force, 4 * 25 * 0.45 * Vector2{-std::sin(0.4), std::cos(0.4)});
}

// Two point masses on light rods, inclinations p and q in W. Lagrange's equations (any textbook's double pendulum):
//   upper joint           m2 l2 ( l2 q'' + l1 p'' cos(p - q) - l1 p'^2 sin(p - q) + g cos q )
//   base less upper joint (m1 + m2) l1 ( l1 p'' + g cos p ) + m2 l1 l2 ( q'' cos(p - q) + q'^2 sin(p - q) )
TEST_CASE("a double pendulum moves as Lagrange's equations say") {
    const double m1 = 3, m2 = 2, l1 = 0.7, l2 = 0.5, p = 0.9, q = -0.6, dp = 5, dq = -8, ddp = 30, ddq = -45;
    const auto loads = loads_of(moved({{l1, m1, l1, 0, p, dp, ddp}, {l2, m2, l2, 0, q, dq, ddq}}));
    const double cosine = std::cos(p - q), sine = std::sin(p - q);
    const double upper = m2 * l2 * (l2 * ddq + l1 * ddp * cosine - l1 * dp * dp * sine + g * std::cos(q));
    const double base = upper + (m1 + m2) * l1 * (l1 * ddp + g * std::cos(p)) +
                        m2 * l1 * l2 * (ddq * cosine + dq * dq * sine);
    check(loads[0].moment, upper);
    check(loads[1].moment, base);
}

// Without mass, each joint must undo the force and its moment about itself: F_P = -F, M_P = -(p_WE - p_WP) x F. With the
// tip at (0.3, 0.4) from the base and F = (-20, 50): 0.3 * 50 + 0.4 * 20 = 23; from the middle joint at (0.3, 0): 8.
TEST_CASE("a force at the tip of a chain without mass is its moment about each joint") {
    auto chain = moved({{0.3, 0, 0.1, 0, 0}, {0.4, 0, 0.1, 0, std::numbers::pi / 2}});
    chain[0].external = {{-20, 50}, {0.3, 0.4}, 0};
    const auto loads = loads_of(chain);
    check(loads[0].force, {20, -50});
    check(loads[1].force, {20, -50});
    check(loads[0].moment, -8);
    check(loads[1].moment, -23);
}

TEST_CASE("a free moment is undone at every joint between it and the base, and at none beyond") {
    auto chain = moved({{0.3, 0, 0.1, 0, 0}, {0.4, 0, 0.1, 0, 1}, {0.4, 0, 0.1, 0, 2}});
    chain[1].external = {{0, 0}, {9, 9}, 12}; // on the middle link, wherever it is said to act
    const auto loads = loads_of(chain);
    check(loads[0].moment, 0);
    check(loads[1].moment, -12);
    check(loads[2].moment, -12);
    check(loads[2].force, {0, 0});
}

TEST_CASE("solving a moving chain at once is moving it and solving it, link by link") {
    const std::array<MovingLink, 4> links{{{0.15, 2.2, 0.09, 0.004, 2.6, 0.1, 0.4},
                                           {0.455, 6.9, 0.255, 0.087, 1.1, -0.6, 2.4},
                                           {0.437, 22.7, 0.258, 0.467, 2.45, 0.7, -1.1},
                                           {0.533, 48.2, 0.334, 3.4, 0.95, -0.2, 3.9}}};
    const MovingBase base{{0.2, 0.1}, {1.5, -0.7}};
    std::array<ChainLink, 4> chain;
    std::array<JointLoad, 4> by_steps, at_once;
    move_chain(base, links, chain);
    solve_chain(chain, by_steps);
    solve_moving_chain(base, links, at_once);
    for (std::size_t i = 0; i < 4; ++i) {
        CHECK(at_once[i].moment == doctest::Approx(by_steps[3 - i].moment).epsilon(1e-12));
        CHECK(at_once[i].force.x == doctest::Approx(by_steps[3 - i].force.x).epsilon(1e-12));
        CHECK(at_once[i].force.y == doctest::Approx(by_steps[3 - i].force.y).epsilon(1e-12));
    }
}
