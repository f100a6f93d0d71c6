// Flight and drag of balls against printed problems and the rules of play.
#include "measurement/allometry.h"
#include "measurement/ball_drag.h"
#include "measurement/ball_flight.h"

#include <doctest/doctest.h>

#include <cmath>

namespace amentum {
namespace {

void check_near(double got, double expected, double tolerance) {
    CAPTURE(got);
    CAPTURE(expected);
    CHECK(std::abs(got - expected) <= tolerance);
}

const Ball baseball = rule_ball(BallKind::baseball);
Air air(double drag_coefficient) {
    return {drag_coefficient, 1.225};
}

double mph_after(const Ball& ball, double mph, double feet, double drag_coefficient) {
    const auto speed = ball_speed_after_distance(ball, air(drag_coefficient), Speed::miles_per_hour(mph),
                                                 Length::feet(feet));
    REQUIRE(speed);
    return Speed::metres_per_second(speed->value).miles_per_hour();
}

} // namespace

TEST_CASE("Shot put, 14.4 m/s at 34 degrees from 2.10 m, g 9.81: a textbook problem; range formula of "
          "plus.maths.org") {
    const auto range =
        ball_range(Speed::metres_per_second(14.4), Angle::degrees(34), Length::metres(2.10), 9.81);
    REQUIRE(range);
    check_near(range->metres(), 22.331, 1e-3);
    const auto back = ball_speed_from_distance({*range, Length::metres(2.10)}, Angle::degrees(34), 9.81);
    REQUIRE(back);
    check_near(back->speed.metres_per_second(), 14.4, 1e-6);
}

TEST_CASE("Ball of 5.125 oz and 9.125 in (rules of baseball), drag coefficient 0.33, air 1.225 kg/m^3: "
          "recomputed") {
    const auto decay = ball_decay_length(baseball, air(0.33));
    REQUIRE(decay);
    check_near(decay->metres(), 168.15, 0.1);
    const auto time = ball_time(baseball, air(0.33), Speed::miles_per_hour(90), Length::feet(55));
    REQUIRE(time);
    check_near(time->seconds(), 0.4381, 0.001);
}

TEST_CASE("90 mph after 55 ft; the saying is that it loses 10 %") {
    check_near(mph_after(baseball, 90, 55, 0.33), 81.46, 0.05);
    check_near(mph_after(baseball, 90, 55, 0.35), 80.97, 0.05);
    check_near(1 - mph_after(baseball, 90, 55, 0.33) / 90, 0.10, 0.01);
}

TEST_CASE("White, Fluid Mechanics, problem 7.94: 100.9 mph measured 10 ft from the plate was 108.1 mph 50 ft "
          "from it "
          "(read second-hand)") {
    check_near(mph_after(baseball, 100.9, -40, 0.33), 108.1, 0.5);
    check_near(mph_after(baseball, 100.9, -40, 0.33), 108.49, 0.01);
}

TEST_CASE("Softball, 12 in and 6.625 oz (from memory), 60 mph over 37 ft: recomputed") {
    check_near(mph_after(rule_ball(BallKind::softball_12), 60, 37, 0.33), 54.85, 0.05);
}

TEST_CASE("Kinetic energy, m v^2 / 2: the outcome of Nakata et al., JSCR 27:2887, 2013; values recomputed") {
    const auto joules = [](double ounces, double mph) {
        return kinetic_energy(Mass::ounces(ounces), Speed::miles_per_hour(mph));
    };
    check_near(joules(5.125, 90), 117.59, 0.05);
    check_near(joules(5.125, 60), 52.26, 0.05);
    check_near(joules(6.625, 60), 67.56, 0.05);
}

TEST_CASE("Cross, Am J Phys, 2004: 60 times the mass, 2.4 times less speed") {
    const auto exponent = ball_mass_exponent({Mass::kilograms(0.06), Mass::kilograms(3.6)},
                                             {Speed::metres_per_second(24), Speed::metres_per_second(10)});
    REQUIRE(exponent);
    check_near(*exponent, -0.2138, 1e-4);
}

} // namespace amentum
