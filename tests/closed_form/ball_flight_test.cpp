// Flight of a point mass in uniform gravity: closed forms, their inverse and their bound.
#include "measurement/ball_drag.h"
#include "measurement/ball_flight.h"

#include <doctest/doctest.h>

#include <cmath>
#include <random>

namespace amentum {
namespace {

void check_near(double got, double expected, double tolerance) {
    CAPTURE(got);
    CAPTURE(expected);
    CHECK(std::abs(got - expected) <= tolerance);
}

double speed_ms(double distance, double height, double degrees, double gravity = 9.81) {
    const auto speed = ball_speed_from_distance({Length::metres(distance), Length::metres(height)},
                                                Angle::degrees(degrees), gravity);
    REQUIRE(speed);
    return speed->speed.metres_per_second();
}

double least_ms(double distance, double height, double gravity = 9.81) {
    const auto speed =
        least_ball_speed_from_distance({Length::metres(distance), Length::metres(height)}, gravity);
    REQUIRE(speed);
    return speed->speed.metres_per_second();
}

} // namespace

TEST_CASE("10 m, g 9.81: hand values of the closed form") {
    check_near(speed_ms(10, 0, 45), 9.9045, 1e-4);
    check_near(speed_ms(10, 1.8, 40), 9.0564, 1e-3);
    check_near(speed_ms(10, 1.8, 30), 9.2927, 1e-3);
    check_near(speed_ms(10, 1.8, 45), 9.1179, 1e-3);
    check_near(least_ms(10, 1.8), 9.0564, 1e-3);
}

TEST_CASE("On level ground the least speed is that of 45 degrees: v^2 = g D") {
    for (const double distance : {1.0, 7.5, 40.0})
        check_near(least_ms(distance, 0), std::sqrt(9.81 * distance), 1e-12);
}

TEST_CASE("No angle reaches the distance with less than the least speed, and one angle needs no more") {
    std::mt19937_64 stream(20260314);
    std::uniform_real_distribution<double> distance(1, 60), height(0, 3);
    for (int i = 0; i < 200; ++i) {
        const double d = distance(stream), h = height(stream);
        CAPTURE(d);
        CAPTURE(h);
        const double least = least_ms(d, h);
        double best = 1e9;
        for (double degrees = 1; degrees < 80; degrees += 0.25)
            best = std::min(best, speed_ms(d, h, degrees));
        CHECK(best >= least * (1 - 1e-12));
        CHECK(best <= least * (1 + 1e-4));
    }
}

TEST_CASE("Range and speed undo each other") {
    std::mt19937_64 stream(7);
    std::uniform_real_distribution<double> speed(2, 45), degrees(-10, 75), height(0.2, 3);
    for (int i = 0; i < 500; ++i) {
        const double v = speed(stream), a = degrees(stream), h = height(stream);
        CAPTURE(v);
        CAPTURE(a);
        CAPTURE(h);
        const auto range =
            ball_range(Speed::metres_per_second(v), Angle::degrees(a), Length::metres(h), 9.81);
        REQUIRE(range);
        if (range->metres() < 0.1 || range->metres() > 150)
            continue; // outside the inverse's range
        check_near(speed_ms(range->metres(), h, a), v, 1e-9 * v);
    }
}

TEST_CASE("Drag: the path time is the integral of 1/v, and there and back is where it began") {
    const Ball ball = rule_ball(BallKind::baseball);
    const Air air;
    const double v0 = 40, path = 16.76;
    constexpr int steps = 20000; // midpoint rule on the independent sum of dx / v(x)
    double sum = 0;
    for (int i = 0; i < steps; ++i) {
        const auto v = ball_speed_after_distance(ball, air, Speed::metres_per_second(v0),
                                                 Length::metres(path * (i + 0.5) / steps));
        REQUIRE(v);
        sum += path / steps / v->value;
    }
    const auto time = ball_time(ball, air, Speed::metres_per_second(v0), Length::metres(path));
    REQUIRE(time);
    check_near(time->seconds(), sum, 1e-9);
    const auto there =
        ball_speed_after_distance(ball, air, Speed::metres_per_second(v0), Length::metres(path));
    REQUIRE(there);
    const auto back =
        ball_speed_after_distance(ball, air, Speed::metres_per_second(there->value), Length::metres(-path));
    REQUIRE(back);
    check_near(back->value, v0, 1e-12);
}

} // namespace amentum
