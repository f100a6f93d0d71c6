// Velocity of a session, radar angle, units of throwing: against printed tables and exact definitions.
#include "measurement/measurement_error.h"
#include "measurement/radar.h"
#include "measurement/session_velocity.h"
#include "values/quantity.h"

#include <doctest/doctest.h>

#include <cmath>

namespace amentum {
namespace {

void check_near(double got, double expected, double tolerance) {
    CAPTURE(got);
    CAPTURE(expected);
    CHECK(std::abs(got - expected) <= tolerance);
}

} // namespace

TEST_CASE("Units, exact by definition: NIST SP 811, appendix B.8") {
    check_near(Speed::miles_per_hour(90).metres_per_second(), 40.2336, 1e-4);
    check_near(Mass::ounces(5).grams(), 141.75, 0.01);
    check_near(Mass::ounces(5.25).grams(), 148.83, 0.01);
    check_near(Mass::ounces(6.25).grams(), 177.18, 0.01);
    check_near(Mass::ounces(7).grams(), 198.45, 0.01);
    check_near(Mass::pounds(45).kilograms(), 20.41165665, 1e-8);
}

TEST_CASE("Taniyama et al., JSCR 35:3414-3419, 2021: the means 25.3 and 81.9 mph") {
    check_near(Speed::miles_per_hour(25.3).metres_per_second(), 11.3101, 1e-4);
    check_near(Speed::miles_per_hour(81.9).metres_per_second(), 36.6126, 1e-4);
}

TEST_CASE("Kageyama et al., J Sports Sci Med 14:246, 2015, table 4: N/kg as body weights") {
    const auto body_weights = [](double newtons_per_kilogram) {
        return newtons_per_kilogram / Force::newtons_per_kilogram_force;
    };
    check_near(body_weights(19.2), 1.96, 0.01);
    check_near(body_weights(11.1), 1.13, 0.01);
    check_near(body_weights(8.4), 0.86, 0.01);
}

TEST_CASE("Radar off the line: the cosine table printed with radars (90 mph at 10, 20, 30 degrees)") {
    struct Row {
        double degrees, read;
    };
    for (const auto& [degrees, read] : {Row{10, 88.63}, Row{20, 84.57}, Row{30, 77.94}}) {
        const auto speed = radar_speed(Speed::miles_per_hour(read), Angle::degrees(degrees));
        REQUIRE(speed);
        check_near(speed->speed.miles_per_hour(), 90, 0.012);
    }
    const auto at_20 = radar_speed(Speed::metres_per_second(0.9397), Angle::degrees(20));
    REQUIRE(at_20);
    check_near(at_20->speed.metres_per_second(), 1, 1e-4);
}

TEST_CASE("Smallest real change of two sessions, s_w 1.0 and s_b 0.8 mph: recomputed (sizes from memory)") {
    const auto change = [](int throws, double between_throws) {
        const auto result = smallest_session_change(throws, {between_throws, 0.8});
        REQUIRE(result);
        return *result;
    };
    check_near(change(5, 1.0), 2.54, 0.01);
    check_near(change(3, 1.0), 2.7, 0.05);
    check_near(change(10, 1.0), 2.4, 0.05);
    check_near(change(3, 1.5), 3.3, 0.05);
    check_near(change(10, 1.5), 2.6, 0.05);
}

TEST_CASE("Best of 3, 5, 10, 20 throws above the mean, in standard deviations: order statistics") {
    check_near(expected_maximum(3), 0.85, 0.01);
    check_near(expected_maximum(5), 1.16, 0.01);
    check_near(expected_maximum(10), 1.54, 0.01);
    check_near(expected_maximum(20), 1.87, 0.01);
}

} // namespace amentum
