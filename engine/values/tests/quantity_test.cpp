// Units against their exact definitions [NistSp811, appendix B.8].
#include "values/quantity.h"

#include <doctest/doctest.h>

using namespace amentum;

TEST_CASE("pounds, ounces, feet, inches and miles an hour are exact") {
    CHECK(Mass::pounds(45).kilograms() == doctest::Approx(20.41165665).epsilon(1e-14)); // 45 x 0.45359237
    CHECK(Mass::ounces(5.125).grams() == doctest::Approx(145.291306015625).epsilon(1e-12));
    CHECK(Length::feet(1).metres() == 0.3048);
    CHECK(Length::inches(1).centimetres() == doctest::Approx(2.54).epsilon(1e-15));
    CHECK(Speed::miles_per_hour(90).metres_per_second() == doctest::Approx(40.2336).epsilon(1e-14));
    CHECK(Speed::kilometres_per_hour(36).metres_per_second() == doctest::Approx(10));
    CHECK(Angle::degrees(180).radians() == doctest::Approx(3.14159265358979));
    CHECK(Angle::degrees(37).degrees() == 37);
    CHECK(Force::newtons_per_kilogram_force == 9.80665);
}

TEST_CASE("quantities add, scale and compare; a ratio of two is a plain number") {
    const Mass sum = Mass::kilograms(20) + 2 * Mass::kilograms(40);
    CHECK(sum.kilograms() == 100);
    CHECK(sum / Mass::kilograms(50) == 2);
    CHECK(Mass::pounds(100) < Mass::kilograms(46));
    CHECK((sum - Mass::kilograms(1)).kilograms() == 99);
}
