// The lead leg under a measured ground force, against levers worked by hand.
#include "body_mechanics/lead_leg.h"

#include "round_body.h"

#include <doctest/doctest.h>

#include <cmath>

using namespace amentum;

namespace {

LandingInstant upright() {
    return {Force::newtons(0),
            Force::newtons(1000),
            Length::metres(0.05),
            Angle::degrees(0),
            Angle::degrees(0),
            {},
            {},
            {}};
}

} // namespace

TEST_CASE("a straight upright leg: every joint feels the force at the same lever") {
    const auto loads = measure_lead_leg(round_body(), upright());
    REQUIRE(loads);
    // Foot of 1 kg, centre 0.05 m ahead; shank and thigh in line with the ankle add nothing.
    const double at_foot = (1000 - 9.80665) * 0.05;
    CHECK(loads->ankle.value == doctest::Approx(at_foot));
    CHECK(loads->knee.value == doctest::Approx(-at_foot)); // held by the muscles behind the knee
    CHECK(loads->hip.value == doctest::Approx(at_foot));
    CHECK(loads->knee_flexion.degrees() == doctest::Approx(0));
    CHECK(loads->force_y_body_weights == doctest::Approx(1000 / (80 * 9.80665)));
    CHECK_FALSE(loads->accelerations_used);
    CHECK(loads->warnings.front().find("held still") != std::string::npos);
}

TEST_CASE("braking asks the knee to extend: lever is the height of the knee") {
    LandingInstant braking = upright();
    braking.force_x = Force::newtons(-500);
    const auto with = measure_lead_leg(round_body(), braking),
               without = measure_lead_leg(round_body(), upright());
    REQUIRE(with);
    // A force of 500 N backward under the foot turns the leg clockwise about the ankle 0.07, the knee 0.52, the hip 0.97 m
    // above it: less plantar flexion and hip extension, more knee extension.
    CHECK(with->ankle.value - without->ankle.value == doctest::Approx(-500 * 0.07));
    CHECK(with->knee.value - without->knee.value == doctest::Approx(500 * 0.52));
    CHECK(with->hip.value - without->hip.value == doctest::Approx(-500 * 0.97));
}

TEST_CASE("accelerations enter as m a at each centre and I alpha") {
    LandingInstant moving = upright();
    moving.foot = SegmentAcceleration{{0, 0}, 0};
    moving.shank = SegmentAcceleration{{10, 0}, 0};
    moving.thigh_acceleration = SegmentAcceleration{{0, 0}, 20};
    const auto loads = measure_lead_leg(round_body(), moving),
               still = measure_lead_leg(round_body(), upright());
    REQUIRE(loads);
    CHECK(loads->accelerations_used);
    CHECK(loads->warnings.empty());
    // Shank of 4 kg pushed forward 0.2 m below the knee: m a r = 4 x 10 x 0.2 counterclockwise about the knee, so the knee
    // extends by that much more, and the hip's extension takes 4 x 10 x 0.65 less.
    CHECK(loads->knee.value - still->knee.value == doctest::Approx(4 * 10 * 0.2));
    // Thigh of 0.2 kg m2 turned counterclockwise at 20 rad/s2: 4 N m at the hip.
    CHECK(loads->hip.value - still->hip.value == doctest::Approx(-4 * 10 * 0.65 - 0.2 * 20));
}

TEST_CASE("the band grows with the errors of what was read, and is their root of squares") {
    LandingInstant at = upright();
    at.shin = Angle::degrees(-10);
    at.thigh = Angle::degrees(55);
    at.force_x = Force::newtons(-400);
    const auto usual = measure_lead_leg(round_body(), at);
    at.angle_error = Angle::degrees(6);
    const auto rough = measure_lead_leg(round_body(), at);
    CHECK(rough->knee.standard_error > usual->knee.standard_error);
    CHECK(rough->knee.value == usual->knee.value);
    at.angle_error = Angle::degrees(0);
    at.force_error_share = 0;
    at.pressure_error = Length::metres(0.02);
    const auto pressure = measure_lead_leg(round_body(), at);
    CHECK(pressure->ankle.standard_error == doctest::Approx(1000 * 0.02)); // F_y times the error of its place
}

TEST_CASE("what no lead leg does is refused, by its field") {
    const auto field_of = [](const LandingInstant& at) {
        const auto loads = measure_lead_leg(round_body(), at);
        return loads ? std::string() : loads.refusal().field;
    };
    LandingInstant at = upright();
    at.force_y = Force::newtons(-1);
    CHECK(field_of(at) == "force_y");
    at = upright();
    at.force_x = Force::newtons(5000);
    CHECK(field_of(at) == "force_x");
    at = upright();
    at.pressure_ahead = Length::metres(0.3);
    CHECK(field_of(at) == "pressure");
    at = upright();
    at.shin = Angle::degrees(-70);
    CHECK(field_of(at) == "shin_lean");
    at = upright();
    at.thigh = Angle::degrees(130);
    CHECK(field_of(at) == "thigh");
    at = upright();
    at.shin = Angle::degrees(-20); // each allowed, but the knee would bend forward by 20
    CHECK(field_of(at) == "knee (shin lean and thigh together)");
    at = upright();
    at.angle_error = Angle::degrees(25);
    CHECK(field_of(at) == "angle_error");
    at = upright();
    at.force_y = Force::newtons(std::nan(""));
    CHECK(field_of(at) == "force_y");
    at = upright();
    at.shank = SegmentAcceleration{{1, 0}, 0};
    CHECK(field_of(at) == "accelerations");
    at = upright();
    at.force_x = Force::newtons(100);
    CHECK(measure_lead_leg(round_body(), at)->warnings.back().find("brakes") != std::string::npos);
}
