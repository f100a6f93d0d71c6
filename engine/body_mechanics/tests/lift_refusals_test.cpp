// What a set-up may ask for, and what it is told when it asks for too much, too little or the impossible.
#include "body_mechanics/holds.h"
#include "body_mechanics/lift_settings.h"
#include "body_mechanics/rear_share.h"
#include "body_mechanics/solve_pose.h"

#include "round_body.h"

#include <doctest/doctest.h>

#include <algorithm>

using namespace amentum;

namespace {

Setup raised(double stance, double pad, double thigh, double trunk) {
    Setup setup{Lift::rear_foot_raised_split_squat, Hold::straight_bar, Mass::kilograms(60)};
    setup.stance = Length::metres(stance);
    setup.pad_height = Length::metres(pad);
    setup.thigh = Angle::degrees(thigh);
    setup.trunk_lean = Angle::degrees(trunk);
    return setup;
}

Refusal refused(const Setup& setup) {
    const auto pose = solve_pose(round_body(), setup);
    REQUIRE_FALSE(pose);
    CHECK(pose.refusal().sentence.ends_with("."));
    CHECK_FALSE(pose.refusal().field.empty());
    return pose.refusal();
}

} // namespace

TEST_CASE("the round body stands in an ordinary set-up") {
    CHECK(solve_pose(round_body(), raised(0.8, 0.4, 85, 20)));
}

TEST_CASE("a setting too few is missing, one too many contradicts balance") {
    Setup setup = raised(0.8, 0.4, 85, 20);
    setup.stance.reset();
    CHECK(refused(setup).code == RefusalCode::missing_field);
    CHECK(refused(setup).field == "stance");

    setup = raised(0.8, 0.4, 85, 20);
    setup.trunk_lean.reset();
    CHECK(refused(setup).field == "trunk_lean");

    setup = raised(0.8, 0.4, 85, 20);
    setup.shin_lean = Angle::degrees(20);
    CHECK(refused(setup).code == RefusalCode::over_determined);
    CHECK(refused(setup).field == "shin_lean");

    setup = raised(0.8, 0.4, 85, 20);
    setup.clearance = Length::centimetres(10);
    CHECK(refused(setup).code == RefusalCode::over_determined);

    Setup pull{Lift::hex_bar_deadlift, Hold::hex_bar, Mass::kilograms(100)};
    pull.shin_lean = Angle::degrees(15);
    CHECK(refused(pull).field == "handle_height");
}

TEST_CASE("a setting, a hold or a rear foot that the lift does not have") {
    Setup setup = raised(0.8, 0.4, 85, 20);
    setup.handle_height = Length::metres(0.3);
    CHECK(refused(setup).code == RefusalCode::method_does_not_apply);
    CHECK(refused(setup).field == "handle_height");

    setup = raised(0.8, 0.4, 85, 20);
    setup.hold = Hold::hex_bar;
    CHECK(refused(setup).field == "hold");
    CHECK(refused(setup).allowed.find("dumbbells") != std::string::npos);

    CHECK_FALSE(rear_share_of(Lift::back_squat));
    CHECK(rear_share_of(Lift::rear_foot_raised_split_squat)->share ==
          doctest::Approx(1 - 0.8436));                                    // [Helme2020]
    CHECK(rear_share_of(Lift::rear_foot_raised_split_squat)->sd == 0.036); // [Helme2020]
    CHECK(rear_share_of(Lift::split_squat)->share == 0.25);                // [McCurdy2017]
}

TEST_CASE("numbers no gym and no body has") {
    Setup setup = raised(0.8, 0.4, 85, 20);
    setup.load = Mass::kilograms(501);
    CHECK(refused(setup).code == RefusalCode::out_of_range);
    CHECK(refused(setup).field == "load");
    setup.load = Mass::kilograms(-1);
    CHECK(refused(setup).field == "load");
    setup = raised(2.5, 0.4, 85, 20);
    CHECK(refused(setup).field == "stance");
    setup = raised(0.8, 0.4, 85, 20);
    setup.pressure_share = 0.8; // ahead of the toes
    CHECK(refused(setup).field == "pressure_share");
    setup = raised(0.8, 0.4, 85, 20);
    setup.rear_share = 0.7;
    CHECK(refused(setup).field == "rear_share");
}

TEST_CASE("a load that nothing holds, a push of a foot that carries nothing") {
    Setup bare = raised(0.8, 0.4, 85, 20);
    bare.hold = Hold::body;
    CHECK(refused(bare).field == "load");
    Setup step{Lift::step_up, Hold::dumbbells, Mass::kilograms(40)};
    step.stance = Length::metres(0.35);
    step.box_height = Length::metres(0.4);
    step.thigh = Angle::degrees(80);
    step.trunk_lean = Angle::degrees(35);
    CHECK(solve_pose(round_body(), step));
    step.rear_force_x = Force::newtons(50);
    CHECK(refused(step).field == "rear_force_x");
    step.rear_share = 0.1;
    CHECK(solve_pose(round_body(), step));
}

TEST_CASE("what stops an impossible posture is said") {
    CHECK(refused(raised(1.9, 0.4, 90, 20)).code == RefusalCode::no_such_posture);
    CHECK(refused(raised(1.9, 0.4, 90, 20)).sentence.find("does not reach") != std::string::npos);
    CHECK(refused(raised(0.5, 0.4, 95, 20)).sentence.find("floor") != std::string::npos);
    Setup pull{Lift::hex_bar_deadlift, Hold::hex_bar, Mass::kilograms(100)};
    pull.handle_height = Length::metres(1.0);
    pull.shin_lean = Angle::degrees(15);
    CHECK(refused(pull).code == RefusalCode::no_such_posture);
    Setup squat{Lift::back_squat, Hold::straight_bar, Mass::kilograms(100)};
    squat.knee = Angle::degrees(120);
    squat.shin_lean = Angle::degrees(-15); // sitting back on upright shins: nothing holds this up
    CHECK(refused(squat).sentence.find("behind") != std::string::npos);
}

TEST_CASE("every setting of a lift can be put and read back, and every lift has a usual hold among its own") {
    for (const auto& [lift, name] : words_of<Lift>) {
        CHECK_FALSE(holds_of(lift).empty());
        Setup setup{lift, holds_of(lift).front(), Mass::kilograms(20)};
        for (const Setting setting : settings_of(lift)) {
            const double middle = (limits_of(setting).low + limits_of(setting).high) / 2;
            CHECK_FALSE(setting_value(setup, setting));
            put_setting(setup, setting, middle);
            CHECK(setting_value(setup, setting) == doctest::Approx(middle));
        }
    }
}
