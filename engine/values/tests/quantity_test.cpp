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

TEST_CASE("the factors are the exact ones, not rounded") {
    CHECK(Mass::kilograms_per_pound == 0.45359237); // pound (avoirdupois), exact
    CHECK(Mass::pounds(1).kilograms() == 0.45359237);
    CHECK(16 * Mass::ounces(1).kilograms() == 0.45359237);
    CHECK(Length::inches(12).metres() == doctest::Approx(Length::feet(1).metres()).epsilon(1e-15));
    CHECK(Speed::miles_per_hour(1).metres_per_second() == 0.44704); // 1609.344 m / 3600 s, exact
    CHECK(Speed::metres_per_second_per_mph == doctest::Approx(5280 * 0.3048 / 3600).epsilon(1e-15));
    CHECK(Duration::minutes(1.5).seconds() == 90);
}

TEST_CASE("what is put in comes back in the same unit") {
    for (double x = 0.25; x < 1000; x += 0.25) {
        CHECK(Mass::pounds(x).pounds() == doctest::Approx(x).epsilon(1e-15));
        CHECK(Mass::ounces(x).ounces() == doctest::Approx(x).epsilon(1e-15));
        CHECK(Length::inches(x).inches() == doctest::Approx(x).epsilon(1e-15));
        CHECK(Speed::miles_per_hour(x).miles_per_hour() == doctest::Approx(x).epsilon(1e-15));
        CHECK(Angle::degrees(x).degrees() == x); // kept as it was read
    }
}

TEST_CASE("quantities add, scale and compare; a ratio of two is a plain number") {
    const Mass sum = Mass::kilograms(20) + 2 * Mass::kilograms(40);
    CHECK(sum.kilograms() == 100);
    CHECK(sum / Mass::kilograms(50) == 2);
    CHECK(Mass::pounds(100) < Mass::kilograms(46));
    CHECK((sum - Mass::kilograms(1)).kilograms() == 99);
}
