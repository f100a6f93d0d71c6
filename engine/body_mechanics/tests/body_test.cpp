// Scaling a body from small tables of round numbers; the published tables are checked in tests/published_examples.
#include "body_mechanics/body.h"

#include <doctest/doctest.h>

#include <limits>

using namespace amentum;

namespace {

// Shares a person can multiply in the head: of a stature of 2 m, a thigh of 0.5 m; of 100 kg, one of 10 kg.
SegmentTables round_tables() {
    const std::vector<SegmentRow> rows{{"Foot", "heel-toe", 0.01, 0.15, 0.4, 0.25},
                                       {"Shank2", "knee-ankle", 0.05, 0.25, 0.4, 0.25},
                                       {"Thigh", "hip-knee", 0.10, 0.25, 0.4, 0.3},
                                       {"Trunk3", "shoulder-hip", 0.45, 0.3, 0.4, 0.4},
                                       {"Trunk2", "neck-hip", 0.45, 0.35, 0.5, 0.3},
                                       {"Head2", "top-neck", 0.07, 0.15, 0.5, 0.3},
                                       {"UpperArm", "shoulder-elbow", 0.03, 0.15, 0.5, 0.3},
                                       {"Forearm", "elbow-wrist", 0.02, 0.15, 0.5, 0.3},
                                       {"Hand", "wrist-knuckle", 0.01, 0.05, 0.5, 0.5}};
    // The other table has a longer thigh, and all else the same.
    const std::vector<SegmentRow> other{{"Foot", "ankle-knuckle", 0.01, 0.15, 0.5, 0.25},
                                        {"Leg", "knee-ankle", 0.05, 0.25, 0.4, 0.25},
                                        {"Thigh", "hip-knee", 0.10, 0.29, 0.4, 0.3},
                                        {"TrunkHeadNeck", "hip-shoulder", 0.52, 0.3, 0.6, 0.5},
                                        {"UpperArm", "shoulder-elbow", 0.03, 0.15, 0.5, 0.3},
                                        {"Forearm", "elbow-wrist", 0.02, 0.15, 0.5, 0.3},
                                        {"Hand", "wrist-knuckle", 0.01, 0.05, 0.5, 0.5}};
    return {rows, rows, other};
}

BodyGiven given(double stature = 2, double mass = 100) {
    return {BodyTable::de_leva, Sex::male, Length::metres(stature), Mass::kilograms(mass)};
}

Refusal refused(const BodyGiven& of) {
    const auto body = scale_body(round_tables(), of);
    REQUIRE_FALSE(body);
    CHECK(body.refusal().code == RefusalCode::out_of_range);
    CHECK(body.refusal().sentence.ends_with("."));
    return body.refusal();
}

} // namespace

TEST_CASE("links are shares of stature and body mass; inertia is mass by radius squared") {
    const Body body = *scale_body(round_tables(), given());
    CHECK(body.thigh.length == doctest::Approx(0.5));
    CHECK(body.thigh.mass == doctest::Approx(10));
    CHECK(body.thigh.centre == doctest::Approx(0.2));          // 0.4 x 0.5, from the hip
    CHECK(body.thigh.inertia == doctest::Approx(10 * 0.0225)); // (0.3 x 0.5)^2
    CHECK(body.foot_length == doctest::Approx(0.3));
    CHECK(body.foot_centre.x ==
          doctest::Approx(0.045)); // 0.4 x 0.3 from the heel, which is 0.075 behind the ankle
    CHECK(body.leg_mass() == doctest::Approx(16));
    CHECK(body.arm_mass() == doctest::Approx(6));
    CHECK(body.arm_length() == doctest::Approx(0.7));
}

// Trunk of 45 kg, 0.6 m long, centre 0.4 x 0.6 below the shoulders: 0.36 above the hip. Head of 7 kg, 0.3 m: its base is
// (0.35 - 0.3) x 2 = 0.1 above the shoulders, its centre 0.15 over that, 0.85 above the hip.
TEST_CASE("the head sits above the shoulders on the trunk's line, and both are one link") {
    const Body body = *scale_body(round_tables(), given());
    const double centre = (45 * 0.36 + 7 * 0.85) / 52;
    CHECK(body.trunk.length == doctest::Approx(0.6));
    CHECK(body.trunk.mass == doctest::Approx(52));
    CHECK(body.trunk.centre == doctest::Approx(centre));
    CHECK(body.trunk.inertia == doctest::Approx(45 * 0.24 * 0.24 + 45 * (centre - 0.36) * (centre - 0.36) +
                                                7 * 0.09 * 0.09 + 7 * (0.85 - centre) * (0.85 - centre)));
    CHECK(body.head_top == doctest::Approx(2 - 0.078 - 0.5 - 0.5)); // standing, the top of the head is at 2 m
}

TEST_CASE("a taped length moves centre and inertia with it, never mass, and no other part") {
    const Body table = *scale_body(round_tables(), given());
    BodyGiven taped = given();
    taped.taped = {{Segment::thigh, Length::metres(0.6)}};
    const Body body = *scale_body(round_tables(), taped);
    CHECK(body.thigh.length == doctest::Approx(0.6));
    CHECK(body.thigh.centre == doctest::Approx(0.24));
    CHECK(body.thigh.inertia == doctest::Approx(10 * 0.0324)); // (0.3 x 0.6)^2
    CHECK(body.thigh.mass == table.thigh.mass);
    CHECK(body.shank.length == table.shank.length);
    CHECK(body.mass_of_parts() == table.mass_of_parts());
    for (const auto& part : body.parts)
        CHECK(part.taped == (part.segment == Segment::thigh));
}

TEST_CASE("the error of a length: half of what the tables differ by, at least 1.5 %; of a taped one 0.5 cm") {
    const Body body = *scale_body(round_tables(), given());
    CHECK(body.thigh.length_error == doctest::Approx(0.04));   // (0.29 - 0.25) x 2 m / 2
    CHECK(body.shank.length_error == doctest::Approx(0.0075)); // 1.5 % of 0.5 m
    BodyGiven taped = given();
    taped.taped = {{Segment::thigh, Length::metres(0.6)}};
    CHECK(scale_body(round_tables(), taped)->thigh.length_error == doctest::Approx(0.005));
}

// The other table's trunk counts from the hip up and has the head in it; its foot counts from the ankle to the ball of the
// foot, taken as half of the foot: centre 0.5 x 0.15 ahead of the ankle, inertia 1 kg x (0.25 x 0.15)^2.
TEST_CASE("the other table: trunk from the hip up with the head, and half a foot") {
    BodyGiven of = given();
    of.table = BodyTable::winter;
    const Body body = *scale_body(round_tables(), of);
    CHECK(body.thigh.length == doctest::Approx(0.58));
    CHECK(body.trunk.mass == doctest::Approx(52));
    CHECK(body.trunk.centre == doctest::Approx(0.36));
    CHECK(body.trunk.inertia == doctest::Approx(52 * 0.09));
    CHECK(body.foot_length == doctest::Approx(0.3));
    CHECK(body.foot_centre.x == doctest::Approx(0.075));
    CHECK(body.foot_inertia == doctest::Approx(0.00140625));
}

TEST_CASE("a stature, a mass or a tape that no body has is refused by its field") {
    CHECK(refused(given(0.99)).field == "stature");
    CHECK(refused(given(2.41)).field == "stature");
    CHECK(refused(given(2, 14.9)).field == "body_mass");
    CHECK(refused(given(2, 251)).field == "body_mass");
    CHECK(refused(given(2, std::numeric_limits<double>::quiet_NaN())).field == "body_mass");
    for (const auto& [segment, name] : words_of<Segment>)
        for (const double metres : {0.02, 1.9}) {
            BodyGiven taped = given();
            taped.taped = {{segment, Length::metres(metres)}};
            CHECK(refused(taped).field == name);
        }
}

TEST_CASE("a tape is allowed from 0.6 to 1.5 times the table's length") { // thigh: 0.30 to 0.75 m
    for (const auto& [metres, allowed] :
         {std::pair{0.299, false}, {0.301, true}, {0.749, true}, {0.751, false}}) {
        BodyGiven taped = given();
        taped.taped = {{Segment::thigh, Length::metres(metres)}};
        CHECK(static_cast<bool>(scale_body(round_tables(), taped)) == allowed);
    }
}
