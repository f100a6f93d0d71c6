// Poses, moments and searches of lifts against an earlier prototype of the same model, written separately in another
// language; the prototype's moments were checked with four rigid-body programs, its poses by identities. No publication
// prints these numbers. An 80 kg, 1.80 m man of table de_leva throughout.
#include "body_mechanics/solve_pose.h"
#include "records/reference_tables.h"

#include <doctest/doctest.h>

#include <fstream>
#include <numbers>
#include <sstream>

using namespace amentum;

namespace {

constexpr double degree = std::numbers::pi / 180;

const SegmentTables& tables() {
    static const SegmentTables segments = [] {
        std::map<std::string, std::string> texts;
        for (const auto& name : reference_file_names()) {
            std::ifstream file(std::string(AMENTUM_SOURCE_DIR) + "/data/" + name);
            std::stringstream text;
            text << file.rdbuf();
            texts[name] = text.str();
        }
        const auto parsed = parse_reference_tables(texts);
        if (!parsed)
            FAIL(parsed.refusal().field << ": " << parsed.refusal().sentence);
        return parsed->segments;
    }();
    return segments;
}

Body man() {
    return *scale_body(tables(), {BodyTable::de_leva, Sex::male, Length::metres(1.80), Mass::kilograms(80)});
}

Setup raised_split_squat() {
    Setup setup{Lift::rear_foot_raised_split_squat, Hold::straight_bar, Mass::kilograms(60)};
    setup.stance = Length::metres(0.80);
    setup.pad_height = Length::metres(0.40);
    setup.thigh = Angle::degrees(90);
    setup.rear_share = 0.156;
    return setup;
}

Pose solved(const Setup& setup) {
    const auto pose = solve_pose(man(), setup);
    if (!pose)
        MESSAGE(pose.refusal().field << ": " << pose.refusal().sentence);
    REQUIRE(pose);
    return *pose;
}

} // namespace

TEST_CASE("rear-foot-raised split squat, leaning 30 degrees: points, pressure and every moment") {
    Setup setup = raised_split_squat();
    setup.shin_lean = Angle::degrees(20);
    setup.pressure_share =
        0.018559 / (0.2581 * 1.8 / 1.741); // the prototype gave all angles and found the pressure
    const Pose pose = solved(setup);
    CHECK(pose.trunk / degree == doctest::Approx(30).epsilon(1e-4));
    CHECK(pose.at(Mark::hip).x == doctest::Approx(-0.280813).epsilon(1e-5));
    CHECK(pose.at(Mark::hip).y == doctest::Approx(0.497968).epsilon(1e-5));
    CHECK(pose.at(Mark::knee).x == doctest::Approx(0.155695).epsilon(1e-5));
    CHECK(pose.at(Mark::rear_knee).x == doctest::Approx(-0.355104).epsilon(1e-5));
    CHECK(pose.at(Mark::rear_knee).y == doctest::Approx(0.067829).epsilon(1e-4));
    CHECK(pose.at(Mark::load).x == doctest::Approx(-0.065624).epsilon(1e-3));
    CHECK(pose.at(Mark::load).y == doctest::Approx(0.970686).epsilon(1e-5));
    CHECK(pose.front.force.y + pose.rear->force.y == doctest::Approx(1372.931).epsilon(1e-6));
    CHECK(std::abs(pose.lead->ankle - 20.956) < 0.01);
    CHECK(std::abs(pose.lead->knee - 155.458) < 0.01);
    CHECK(std::abs(pose.lead->hip - 310.970) < 0.02);
    CHECK(std::abs(pose.rear_leg->ankle - -16.731) < 0.01);
    CHECK(std::abs(pose.rear_leg->knee - 85.490) < 0.01);
    CHECK(std::abs(pose.rear_leg->hip - -94.699) < 0.01);
}

TEST_CASE("rear-foot-raised split squat, trunk 20 degrees: balance finds the shin, and the share decides hip "
          "to knee") {
    Setup setup = raised_split_squat();
    setup.trunk_lean = Angle::degrees(20);
    const Pose pose = solved(setup);
    CHECK(std::abs(pose.shin / degree - 33.447) < 0.05);
    CHECK(std::abs(pose.lead->knee - 222.995) < 0.1);
    CHECK(std::abs(pose.lead->hip - 243.432) < 0.1);
    CHECK(pose.hip_share() == doctest::Approx(1.0916 / 2.0916).epsilon(1e-3));
    for (const auto& [share, ratio] : {std::pair{0.12, 0.7895}, {0.192, 1.5185}}) {
        setup.rear_share = share;
        const Pose moved = solved(setup);
        CHECK(std::abs(moved.lead->hip / moved.lead->knee - ratio) < 0.002);
    }
}

TEST_CASE(
    "squat with the bar at the shoulders, knee 90 degrees: trunk and hip to knee at three shin angles") {
    for (const auto& [shin, trunk, ratio] :
         {std::array{25.0, 38.7, 1.881}, {30.0, 29.2, 1.143}, {35.0, 20.4, 0.675}}) {
        Setup setup{Lift::back_squat, Hold::straight_bar, Mass::kilograms(60)};
        setup.load_along = 1;
        setup.load_ahead = Length::metres(0);
        setup.pressure_share = 0.25;
        setup.knee = Angle::degrees(90);
        setup.shin_lean = Angle::degrees(shin);
        const Pose pose = solved(setup);
        CHECK(std::abs(pose.trunk / degree - trunk) < 0.1);
        CHECK(std::abs(pose.lead->hip / pose.lead->knee - ratio) < 0.005);
    }
}

TEST_CASE(
    "hex bar of 140 kg: low handles at a shin of 20 degrees, and the height that starts at a square knee") {
    Setup setup{Lift::hex_bar_deadlift, Hold::hex_bar, Mass::kilograms(140)};
    setup.handle_height = Length::metres(0.225);
    setup.shin_lean = Angle::degrees(20);
    const Pose low = solved(setup);
    CHECK(std::abs(low.knee() / degree - 108.8) < 0.1);
    CHECK(std::abs(low.trunk / degree - 45.0) < 0.1);
    CHECK(std::abs(low.lead->knee - 213.9) < 0.2);
    CHECK(std::abs(low.lead->hip - 649.0) < 0.2);
    setup.handle_height = Length::metres(0.325);
    const Pose high = solved(setup);
    CHECK(std::abs(high.knee() / degree - 97.2) < 0.1);
    CHECK(std::abs(high.trunk / degree - 43.2) < 0.1);
    CHECK(std::abs(high.lead->hip - 628) < 0.6);
    setup.handle_height = Length::metres(0.3935);
    CHECK(std::abs(solved(setup).knee() / degree - 90) < 0.15);
}

TEST_CASE("hex bar at a square knee: handle height sets the shin") {
    Setup setup{Lift::hex_bar_deadlift, Hold::hex_bar, Mass::kilograms(140)};
    setup.knee = Angle::degrees(90);
    for (const auto& [height, shin, ratio] : {std::array{0.225, 11.0, 11.2}, {0.325, 15.8, 4.6}}) {
        setup.handle_height = Length::metres(height);
        const Pose pose = solved(setup);
        CHECK(std::abs(pose.shin / degree - shin) < 0.1);
        CHECK(std::abs(pose.lead->hip / pose.lead->knee - ratio) < 0.06);
    }
}

TEST_CASE("pull-up of 80 kg with 20 kg on the belt, elbows square and at 120 degrees") {
    Setup setup{Lift::pull_up, Hold::belt, Mass::kilograms(20)};
    setup.elbow = Angle::degrees(90);
    const Pose square = solved(setup);
    CHECK(std::abs(square.elbow - 213.70) < 0.05);
    CHECK(std::abs(square.shoulder) < 1e-6);
    CHECK(std::abs(square.forearm / degree - 37.2) < 0.1);
    setup.elbow = Angle::degrees(120);
    CHECK(std::abs(solved(setup).elbow - 257.0) < 0.1);
}
