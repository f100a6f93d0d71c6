// Errors of measurement against published pairs, and correlations against published intervals.
#include "measurement/correlation.h"
#include "measurement/joint_range.h"
#include "measurement/measurement_error.h"
#include "values/interval.h"

#include <doctest/doctest.h>

#include <cmath>
#include <utility>

namespace amentum {
namespace {

void check_near(double got, double expected, double tolerance) {
    CAPTURE(got);
    CAPTURE(expected);
    CHECK(std::abs(got - expected) <= tolerance);
}

} // namespace

TEST_CASE("Weir, J Strength Cond Res 19:231-240, 2005: SEM and smallest detectable change, recomputed") {
    const auto error = standard_error_of_measurement(20, 0.97);
    REQUIRE(error);
    check_near(*error, 3.4641, 1e-4);
    check_near(smallest_detectable_change(*error, z95), 9.6020, 1e-3);
}

TEST_CASE(
    "J Orthop Surg Res 2023, s13018-023-03974-4: SEM 1.69 is printed with a detectable change of 4.68") {
    check_near(smallest_detectable_change(1.69, z95), 4.68, 0.01);
    // Two more pairs of the same paper; their SEM are rounded to two decimals, their changes to less.
    check_near(smallest_detectable_change(13.61, z95), 37.62, 0.2);
    check_near(smallest_detectable_change(52.12, z95), 144.04, 0.5);
}

TEST_CASE("Bullock, JSMPF 2020: hip rotation, SEM 3.2 and 2.2 degrees with 7.5 and 5.1 (90 %)") {
    check_near(smallest_detectable_change(3.2, z90), 7.5, 0.1);
    check_near(smallest_detectable_change(2.2, z90), 5.1, 0.1);
}

TEST_CASE("Shoulder angles: 90 % detectable change for SEM 2, 3, 4 degrees, recomputed") {
    check_near(smallest_detectable_change(2, z90), 4.7, 0.1);
    check_near(smallest_detectable_change(3, z90), 7.0, 0.1);
    check_near(smallest_detectable_change(4, z90), 9.3, 0.1);
}

TEST_CASE("A rotation deficit above 5 degrees that is not there, SEM 2.4 degrees an angle: recomputed") {
    check_near(chance_of_false_flag(0, 5, 2.4), 0.149, 0.005);
}

TEST_CASE("Wilk et al., Clin Orthop Relat Res 470:1586, 2012: 132 + 52 against 127 + 63 degrees") {
    const auto angle = [](std::string test, Side side, double degrees) {
        return TestResult{AthleteId{"a"},
                          Date::from_days(20000),
                          std::move(test),
                          side,
                          degrees,
                          2.4,
                          2,
                          "",
                          {},
                          {},
                          "inclinometer 1",
                          "R",
                          PlaceMeasured::unknown};
    };
    const ShoulderRotation throwing{angle("external", Side::right, 132), angle("internal", Side::right, 52)};
    const ShoulderRotation other{angle("external", Side::left, 127), angle("internal", Side::left, 63)};
    const auto deficit = measure_rotation_deficit(throwing, other);
    REQUIRE(deficit);
    check_near(deficit->value, 6, 1e-12); // 190 - 184
    check_near(deficit->standard_error, 4.8, 1e-12);
    const auto external = measure_side_difference(throwing.external, other.external);
    REQUIRE(external);
    check_near(external->value, 5, 1e-12);
}

TEST_CASE("Correlations with their intervals: Sakurai et al., JSCR 38(7):1288, 2024; Taniyama et al., JSCR "
          "35:3414-3419, 2021") {
    const auto impulse = fisher_z(0.71, 19); // jump impulse and fastball velocity
    REQUIRE(impulse);
    check_near(impulse->z.value, 0.887, 0.001);
    check_near(impulse->z.standard_error, 0.250, 0.001);
    check_near(impulse->limits_of_r.low, 0.38, 0.005);
    check_near(impulse->limits_of_r.high, 0.88, 0.005);
    const auto ball = fisher_z(0.62, 15); // rotational ball throw and pitching velocity
    REQUIRE(ball);
    check_near(ball->z.value, 0.725, 0.001);
    check_near(ball->z.standard_error, 0.289, 0.001);
    check_near(ball->limits_of_r.low, 0.16, 0.005);
    check_near(ball->limits_of_r.high, 0.86, 0.005);
}

TEST_CASE("Kendall's tau 0.653 of grip and velocity, Front Sports Act Living 4:822454, 2022: r by sin(pi tau "
          "/ 2)") {
    const auto r = correlation_from_tau(0.653);
    REQUIRE(r);
    check_near(*r, 0.855, 0.001);
}

TEST_CASE("Expected largest of n normal readings: Teichroew, Ann Math Stat 27:410-426, 1956 (from memory)") {
    check_near(expected_maximum(1), 0, 1e-10);
    check_near(expected_maximum(2), 0.5641895835, 1e-9);
    check_near(expected_maximum(3), 0.8462843753, 1e-9);
    check_near(expected_maximum(5), 1.1629644736, 1e-9);
    check_near(expected_maximum(10), 1.5387527308, 1e-9);
    check_near(expected_maximum(20), 1.8674750598, 1e-9);
}

} // namespace amentum
