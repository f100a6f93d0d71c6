// Which way joint moments go when a lift is set up differently, as published; every source by its abstract.
#include "body_mechanics/solve_pose.h"

#include "../laws/on_disk_tables.h"

#include <doctest/doctest.h>

#include <numbers>

using namespace amentum;

namespace {

constexpr double degree = std::numbers::pi / 180;

std::vector<Body> adults() {
    std::vector<Body> all;
    for (const BodyTable table : {BodyTable::de_leva, BodyTable::winter}) {
        all.push_back(
            *scale_body(segments_on_disk(), {table, Sex::male, Length::metres(1.80), Mass::kilograms(80)}));
        all.push_back(
            *scale_body(segments_on_disk(), {table, Sex::female, Length::metres(1.68), Mass::kilograms(64)}));
    }
    return all;
}

Pose solved(const Body& body, const Setup& setup) {
    const auto pose = solve_pose(body, setup);
    if (!pose)
        FAIL(pose.refusal().sentence);
    return *pose;
}

Setup split(Lift lift, double stance, double trunk) {
    Setup setup{lift, Hold::straight_bar, Mass::kilograms(50)};
    setup.stance = Length::metres(stance);
    if (lift == Lift::rear_foot_raised_split_squat)
        setup.pad_height = Length::metres(0.38);
    setup.thigh = Angle::degrees(80);
    setup.trunk_lean = Angle::degrees(trunk);
    return setup;
}

Setup pull(Lift lift, double shin, double height = 0.225) {
    Setup setup{lift, lift == Lift::hex_bar_deadlift ? Hold::hex_bar : Hold::bar_in_hands,
                Mass::kilograms(120)};
    setup.handle_height = Length::metres(height);
    setup.shin_lean = Angle::degrees(shin);
    return setup;
}

} // namespace

TEST_CASE("split squat: a longer stance asks more of the hip and less of the knee") {
    // [Song2023] 20 athletes, four step lengths: peak hip extension and knee moments differ between them (p < .001, .002)
    // and hip extensors work more in the longer ones; which way the knee's moment goes was not noted from the abstract.
    for (const Body& body : adults())
        for (const Lift lift : {Lift::split_squat, Lift::rear_foot_raised_split_squat}) {
            int pairs = 0; // of stances this body can stand in
            for (double stance = 0.34; stance < 0.6; stance += 0.02) {
                const double height = body.given.stature.metres();
                const auto shorter = solve_pose(body, split(lift, stance * height, 20));
                const auto longer = solve_pose(body, split(lift, (stance + 0.02) * height, 20));
                if (!shorter || !longer)
                    continue;
                ++pairs;
                CHECK(longer->lead->hip > shorter->lead->hip);
                CHECK(longer->lead->knee < shorter->lead->knee);
            }
            CHECK(pairs >= 4);
        }
}

TEST_CASE("squat and split squat: leaning the trunk asks more of the hip and less of the knee") {
    // [Straub] trunk lean told the knee moment of squats better than shin lean did (R2 .49-.50 against .21-.25).
    for (const Body& body : adults())
        for (double trunk = 15; trunk < 45; trunk += 5) {
            Setup squat{Lift::back_squat, Hold::straight_bar, Mass::kilograms(60)};
            squat.knee = Angle::degrees(90);
            squat.trunk_lean = Angle::degrees(trunk);
            Setup leaning = squat;
            leaning.trunk_lean = Angle::degrees(trunk + 5);
            CHECK(solved(body, leaning).lead->hip > solved(body, squat).lead->hip);
            CHECK(solved(body, leaning).lead->knee < solved(body, squat).lead->knee);
            const double stance = 0.40 * body.given.stature.metres();
            const Pose upright = solved(body, split(Lift::split_squat, stance, trunk));
            const Pose leant = solved(body, split(Lift::split_squat, stance, trunk + 5));
            CHECK(leant.lead->hip > upright.lead->hip);
            CHECK(leant.lead->knee < upright.lead->knee);
        }
}

TEST_CASE("squat: hip and knee ask the same when shin and trunk lean nearly alike") {
    // [Barrack2021] knee-biased (hip to knee 1 or less) once the shin leans 8 degrees or more beyond the trunk. Accepted
    // here: equality between 10 and 0 degrees.
    const Body man = adults().front();
    double before = 2;
    for (double shin = 20; shin <= 40; shin += 0.25) {
        Setup squat{Lift::back_squat, Hold::straight_bar, Mass::kilograms(60)};
        squat.load_along = 1;
        squat.load_ahead = Length::metres(0);
        squat.pressure_share = 0.25;
        squat.knee = Angle::degrees(90);
        squat.shin_lean = Angle::degrees(shin);
        const Pose pose = solved(man, squat);
        const double ratio = pose.lead->hip / pose.lead->knee;
        if (before > 1 && ratio <= 1) {
            const double beyond = (pose.trunk - pose.shin) / degree;
            CHECK(beyond > -10);
            CHECK(beyond < 0);
        }
        before = ratio;
    }
    CHECK(before < 1); // the crossing was passed
}

TEST_CASE(
    "deadlift: the hex bar asks less of the hip and more of the knee than the straight bar at equal load") {
    // [Swinton2011] 19 powerlifters. A straight bar lies over the middle of the foot against the shin, which holds the shin
    // near upright (about 10 degrees: bar 4 cm ahead of the shin's line); in a hex bar nothing does, and the lifter's
    // shins lean as in a squat. At one and the same shin lean the static knee moment is equal by construction.
    for (const Body& body : adults()) {
        const Pose straight = solved(body, pull(Lift::straight_bar_deadlift, 12));
        for (const double shin : {25.0, 30.0}) {
            const Pose hex = solved(body, pull(Lift::hex_bar_deadlift, shin));
            CHECK(hex.lead->hip < straight.lead->hip);
            CHECK(hex.lead->knee > straight.lead->knee);
        }
    }
}

TEST_CASE("deadlift: from squat style to hinge style the knee moment turns its sign") {
    // [Lee2018] peak knee moment +0.21 N m/(kg cm) conventional, -0.28 Romanian; the Romanian starts from above, shins
    // upright.
    for (const Body& body : adults()) {
        CHECK(solved(body, pull(Lift::straight_bar_deadlift, 12)).lead->knee > 0);
        CHECK(solved(body, pull(Lift::straight_bar_deadlift, 0, 0.5)).lead->knee < 0);
        double before = -1e9; // and on the way it rises all along
        for (double shin = 0; shin <= 30; shin += 5) {
            const double knee = solved(body, pull(Lift::hex_bar_deadlift, shin)).lead->knee;
            CHECK(knee > before);
            before = knee;
        }
        CHECK(solved(body, pull(Lift::hex_bar_deadlift, 0)).lead->knee < 0);
        CHECK(before > 0);
    }
}
