// An overhead throw, against levers, circles and the balance of power.
#include "body_mechanics/ball_throw.h"

#include "round_body.h"

#include <doctest/doctest.h>

#include <cmath>
#include <numbers>

using namespace amentum;

namespace {

constexpr double degree = std::numbers::pi / 180, g = 9.80665;

OverheadThrow kneeling(double upper_arm_deg, double forearm_deg) {
    return {ThrowStance::kneeling,        Mass::pounds(4),      {},
            {Angle::degrees(90)},         {Angle::degrees(90)}, {Angle::degrees(upper_arm_deg)},
            {Angle::degrees(forearm_deg)}};
}

// Positions and velocities of a made-up smooth swing: inclinations a + b sin(c t), radians.
struct Swing {
    double a, b, c;
    double angle(double t) const { return a + b * std::sin(c * t); }
    double rate(double t) const { return b * c * std::cos(c * t); }
    double acceleration(double t) const { return -b * c * c * std::sin(c * t); }
};

LinkMotion at(const Swing& swing, double t) {
    return {Angle::radians(swing.angle(t)), swing.rate(t) / degree, swing.acceleration(t) / degree};
}

} // namespace

TEST_CASE("everything stacked upright needs no moment; arms held level need their weights' levers") {
    const auto stacked = measure_ball_throw(round_body(), kneeling(90, 90));
    REQUIRE(stacked);
    CHECK(std::abs(stacked->moving.shoulder) < 1e-9);
    CHECK(std::abs(stacked->moving.knee) < 1e-9);

    const auto level =
        measure_ball_throw(round_body(), kneeling(180, 180)); // straight back, ball behind the head
    REQUIRE(level);
    // Two upper arms of 2 kg at 0.15, forearms of 1.5 at 0.30 + 0.12, hands of 0.5 at 0.57 + 0.05, the ball at 0.65 m.
    const double ball = 4 * 0.45359237;
    const double lever = 4 * 0.15 + 3 * 0.42 + 1 * 0.62 + ball * 0.65;
    CHECK(level->moving.shoulder == doctest::Approx(g * lever)); // throws: holds it against falling back
    CHECK(level->moving.shoulder == level->still.shoulder);
    CHECK(level->moving.elbow == doctest::Approx(g * (3 * 0.12 + 1 * 0.32 + ball * 0.35)));
    CHECK(level->points.back().x == doctest::Approx(-0.65));
    CHECK(level->points.back().y == doctest::Approx(0.95));
    CHECK(level->warnings.back().find("held still") != std::string::npos);
}

TEST_CASE(
    "straight arms turning forward at a steady rate: speed is rate times length, acceleration points home") {
    OverheadThrow thrown = kneeling(90, 90);
    thrown.upper_arm.rate = thrown.forearm.rate = -500;
    const auto loads = measure_ball_throw(round_body(), thrown);
    REQUIRE(loads);
    const double omega = 500 * degree;
    CHECK(loads->ball_velocity.x == doctest::Approx(0.65 * omega));
    CHECK(std::abs(loads->ball_velocity.y) < 1e-9);
    CHECK(loads->ball_acceleration.y == doctest::Approx(-0.65 * omega * omega));
    CHECK(std::abs(loads->moving.shoulder) < 1e-9); // pulls along the arms, turns nothing
}

TEST_CASE("joint moments give exactly the power by which kinetic and potential energy change") {
    const Body body = round_body();
    const Swing thigh{1.6, 0.1, 3}, trunk{1.7, -0.3, 4}, upper_arm{2.0, -0.9, 5}, forearm{2.6, -1.1, 6};
    const double ball = 3;
    const auto thrown = [&](double t) {
        return OverheadThrow{ThrowStance::kneeling, Mass::kilograms(ball), {}, at(thigh, t), at(trunk, t),
                             at(upper_arm, t),      at(forearm, t)};
    };
    // Energy from positions and rates alone.
    const auto energy = [&](double t) {
        Vector2 p{0, 0}, v{0, 0};
        double sum = 0;
        const auto add = [&](const Swing& s, double length, double mass, double centre, double inertia) {
            const Vector2 u{std::cos(s.angle(t)), std::sin(s.angle(t))}, n{-u.y, u.x};
            const Vector2 pc = p + centre * u, vc = v + centre * s.rate(t) * n;
            sum += mass * g * pc.y + mass * dot(vc, vc) / 2 + inertia * s.rate(t) * s.rate(t) / 2;
            p = p + length * u;
            v = v + length * s.rate(t) * n;
        };
        add(thigh, 0.45, 22, 0.25, 0.4);
        add(trunk, 0.5, 40, 0.3, 2);
        add(upper_arm, 0.3, 4, 0.15, 0.04);
        add(forearm, 0.27, 3, 0.12, 0.02);
        add(forearm, 0.08, 1, 0.05, 0.002);
        return sum + ball * g * p.y + ball * dot(v, v) / 2;
    };
    for (const double t : {0.05, 0.2, 0.37}) {
        const auto loads = measure_ball_throw(body, thrown(t));
        REQUIRE(loads);
        // Positive throws, which is clockwise: power = - moment x rate of the link beyond less the one before.
        const double power =
            -(loads->moving.knee * thigh.rate(t) + loads->moving.hip * (trunk.rate(t) - thigh.rate(t)) +
              loads->moving.shoulder * (upper_arm.rate(t) - trunk.rate(t)) +
              loads->moving.elbow * (forearm.rate(t) - upper_arm.rate(t)));
        constexpr double h = 1e-3;
        const double change =
            (energy(t - 2 * h) - 8 * energy(t - h) + 8 * energy(t + h) - energy(t + 2 * h)) / (12 * h);
        CHECK(power == doctest::Approx(change).epsilon(1e-7));
    }
}

TEST_CASE("standing throws need the shank, kneeling ones have none; numbers no film shows are refused") {
    OverheadThrow thrown = kneeling(90, 90);
    thrown.stance = ThrowStance::standing;
    CHECK(measure_ball_throw(round_body(), thrown).refusal().field == "shank");
    thrown.shank = LinkMotion{Angle::degrees(80)};
    const auto standing = measure_ball_throw(round_body(), thrown);
    REQUIRE(standing);
    CHECK(standing->moving.ankle.has_value());
    CHECK(standing->points.size() == 7);
    CHECK(standing->base_force.y == doctest::Approx(g * (22 + 8 + 40 + 4 + 3 + 1 + 4 * 0.45359237)));
    thrown.stance = ThrowStance::kneeling;
    CHECK(measure_ball_throw(round_body(), thrown).refusal().code == RefusalCode::method_does_not_apply);
    thrown = kneeling(90, 90);
    thrown.ball = Mass::kilograms(11);
    CHECK(measure_ball_throw(round_body(), thrown).refusal().field == "ball");
    thrown = kneeling(90, 90);
    thrown.forearm.rate = 3000;
    CHECK(measure_ball_throw(round_body(), thrown).refusal().field == "forearm_rate");
    thrown = kneeling(90, 90);
    thrown.trunk.acceleration = -1e6;
    CHECK(measure_ball_throw(round_body(), thrown).refusal().field == "trunk_acceleration");
}

TEST_CASE("ball masses: common practice is said") {
    OverheadThrow thrown = kneeling(90, 90);
    CHECK(measure_ball_throw(round_body(), thrown)->warnings.size() == 1); // held still
    thrown.ball = Mass::pounds(8);
    CHECK(measure_ball_throw(round_body(), thrown)->warnings.front().find("4 to 6 lb") != std::string::npos);
    thrown.ball = Mass::pounds(10);
    CHECK(measure_ball_throw(round_body(), thrown)->warnings.front().find("above 8 lb") != std::string::npos);
}

TEST_CASE(
    "standing: the ankles take part in the power, and a body that falls as one rod needs no other joint") {
    // Shank, thigh, trunk and arms in one line, turning about the ankle with the acceleration a falling rod has,
    // alpha = - g sum(m r) cos(phi) / I about the ankle: no moment at the ankle.
    const double phi = 60 * degree, ball = 2;
    struct Part {
        double mass, at, inertia;
    };
    const Part parts[] = {{8, 0.25, 0.1},  {22, 0.45 + 0.25, 0.4}, {40, 0.9 + 0.3, 2}, {4, 1.4 + 0.15, 0.04},
                          {3, 1.82, 0.02}, {1, 2.02, 0.002},       {ball, 2.05, 0}};
    double moment = 0, inertia = 0, mass = 0;
    for (const auto& part : parts) {
        moment += part.mass * part.at;
        inertia += part.mass * part.at * part.at + part.inertia;
        mass += part.mass;
    }
    const double alpha = -g * moment * std::cos(phi) / inertia;
    const LinkMotion falling{Angle::radians(phi), 0, alpha / degree};
    const auto loads = measure_ball_throw(round_body(), {ThrowStance::standing, Mass::kilograms(ball),
                                                         falling, falling, falling, falling, falling});
    REQUIRE(loads);
    CHECK(std::abs(*loads->moving.ankle) < 1e-9);
    CHECK(*loads->still.ankle ==
          doctest::Approx(-g * moment * std::cos(phi))); // holds it from falling forward
    CHECK(loads->base_force.x == doctest::Approx(-moment * alpha * std::sin(phi)));
    CHECK(loads->base_force.y == doctest::Approx(mass * g + moment * alpha * std::cos(phi)));
}

TEST_CASE("the band of a moment: angles by the sine, rates twice, accelerations once") {
    const double ball = 4 * 0.45359237, forearm_lever = 3 * 0.12 + 1 * 0.32 + ball * 0.35,
                 upper_lever = 4 * 0.15 + (3 + 1 + ball) * 0.3;
    OverheadThrow thrown = kneeling(135, 135);
    thrown.angle_error = Angle::degrees(2);
    // Held: shoulder = - g (upper_lever cos u + forearm_lever cos f); a turn of either by 2 degrees.
    CHECK(measure_ball_throw(round_body(), thrown)->moving_error.shoulder ==
          doctest::Approx(g * std::hypot(upper_lever, forearm_lever) * std::sin(135 * degree) *
                          std::sin(2 * degree)));

    // Upper arms up, forearms level behind, turning: their pull toward the elbow acts 0.3 m over the shoulder.
    thrown = kneeling(90, 180);
    thrown.angle_error = Angle::degrees(0);
    thrown.rate_error_share = 0.1;
    thrown.forearm.rate = -600;
    const double omega = 600 * degree;
    CHECK(measure_ball_throw(round_body(), thrown)->moving_error.shoulder ==
          doctest::Approx(2 * 0.1 * 0.3 * forearm_lever * omega * omega));

    // Arms straight up, each of the two accelerations wrong by its share, by m a r and I alpha.
    thrown = kneeling(90, 90);
    thrown.angle_error = Angle::degrees(0);
    thrown.acceleration_error_share = 0.2;
    thrown.upper_arm.acceleration = -5000;
    thrown.forearm.acceleration = -8000;
    const double by_upper =
                     (0.04 + 4 * 0.15 * 0.15 + 0.3 * (3 * 0.42 + 1 * 0.62 + ball * 0.65)) * 5000 * degree,
                 by_forearm =
                     (0.02 + 3 * 0.12 * 0.42 + 0.002 + 1 * 0.32 * 0.62 + ball * 0.35 * 0.65) * 8000 * degree;
    const auto loads = measure_ball_throw(round_body(), thrown);
    CHECK(loads->moving.shoulder == doctest::Approx(by_upper + by_forearm));
    CHECK(loads->moving_error.shoulder == doctest::Approx(0.2 * std::hypot(by_upper, by_forearm)));
    CHECK_FALSE(loads->moving_error.ankle.has_value());
}
