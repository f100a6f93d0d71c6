// Searching for a set-up: what is found is what was wanted, what is not found says what stops it.
#include "body_mechanics/search_setup.h"

#include "setups_of_a_man.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <numbers>

using namespace amentum;

namespace {

constexpr double degree = std::numbers::pi / 180;

// Angles from the points, moments of one leg from the pose: not by the search's own reading.
double measured(const Pose& pose, Target target) {
    const auto lean = [](Vector2 from, Vector2 to) { // forward from upright
        return std::atan2(to.x - from.x, to.y - from.y) / degree;
    };
    const double shin = lean(pose.at(Mark::ankle), pose.at(Mark::knee));
    const double thigh = -lean(pose.at(Mark::knee), pose.at(Mark::hip));
    const double trunk = lean(pose.at(Mark::hip), pose.at(Mark::shoulder));
    const double knee = pose.lead->knee, hip = pose.lead->hip;
    switch (target) {
    case Target::knee_angle:
        return shin + thigh;
    case Target::hip_angle:
        return thigh + trunk;
    case Target::shin_angle:
        return shin;
    case Target::trunk_angle:
        return trunk;
    case Target::hip_share:
        return hip / (hip + knee);
    case Target::knee_moment:
        return knee / pose.legs;
    case Target::hip_moment:
        return hip / pose.legs;
    }
    return std::nan("");
}

} // namespace

TEST_CASE("a stance for a hip share, a height for a knee angle: an independent prototype found the same") {
    Setup setup = raised();
    setup.rear_share = 0.156;
    const auto stance = search_setup(
        man(), setup, {}, {Target::hip_share, 1.25 / 2.25, Varied::stance, 0.4, 1.4}); // H : K of 1.25
    REQUIRE(stance);
    CHECK(stance->reached);
    CHECK(std::abs(stance->setting - 0.9209) < 0.002);
    CHECK(std::abs(stance->pose.shin / degree - 31.4) < 0.1);
    const auto height =
        search_setup(man(), hex(), {}, {Target::knee_angle, 90, Varied::handle_height, 0.1, 0.8});
    REQUIRE(height);
    CHECK(std::abs(height->setting - 0.3935) < 0.001);
}

TEST_CASE("what is found, set up again, gives what was wanted") {
    struct Ask {
        Setup from;
        Wanted wanted;
        double tolerance;
    };
    const std::vector<Ask> asks{
        {raised(), {Target::hip_share, 0.6, Varied::trunk_lean, 0, 60}, 1e-3},
        {raised(), {Target::knee_moment, 300, Varied::load, 0, 300}, 0.1},
        {raised(), {Target::hip_moment, 200, Varied::load, 0, 300}, 0.1},
        {raised(), {Target::shin_angle, 30, Varied::stance, 0.4, 1.4}, 0.05},
        {raised(), {Target::hip_angle, 120, Varied::trunk_lean, 0, 60}, 0.05},
        {hex(), {Target::trunk_angle, 40, Varied::shin_lean, 0, 45}, 0.05},
        {hex(), {Target::hip_share, 0.8, Varied::shin_lean, 0, 45}, 1e-3},
        {hex(), {Target::hip_moment, 300, Varied::load, 0, 300}, 0.1},
        {hex(), {Target::knee_angle, 100, Varied::handle_height, 0.1, 0.6}, 0.05},
    };
    for (const auto& [from, wanted, tolerance] : asks) {
        const auto found = search_setup(man(), from, {}, wanted);
        REQUIRE(found);
        INFO(word(wanted.target) << " by " << word(wanted.varied));
        CHECK(found->reached);
        CHECK(found->stopped_by.empty());
        CHECK(found->setting >= wanted.low);
        CHECK(found->setting <= wanted.high);
        CHECK(std::abs(found->value - wanted.value) < tolerance);
        const auto again = solve_pose(man(), found->setup);
        REQUIRE(again);
        CHECK(std::abs(measured(*again, wanted.target) - wanted.value) < tolerance);
    }
}

TEST_CASE("out of reach: the nearest, and what stops it") {
    const auto more = search_setup(man(), raised(), {}, {Target::hip_share, 0.9, Varied::stance, 0.4, 1.4});
    REQUIRE(more);
    CHECK_FALSE(more->reached);
    CHECK(more->value < 0.9);
    CHECK(more->value > 0.55);
    CHECK(more->stopped_by.ends_with("."));

    const auto less = search_setup(man(), raised(), {}, {Target::hip_share, 0.2, Varied::stance, 0.4, 1.4});
    REQUIRE(less);
    CHECK(less->stopped_by.find("floor") != std::string::npos);

    const auto range = search_setup(man(), raised(), {}, {Target::knee_moment, 900, Varied::load, 0, 100});
    REQUIRE(range);
    CHECK(range->setting == doctest::Approx(100));
    CHECK(range->stopped_by == "The range of the search ends there.");

    MotionLimits stiff;
    stiff.ankle = Angle::degrees(28);
    stiff.ankle_tested = true;
    const auto ankle =
        search_setup(man(), raised(), stiff, {Target::hip_share, 0.5, Varied::trunk_lean, 0, 60});
    REQUIRE(ankle);
    CHECK_FALSE(ankle->reached);
    CHECK(ankle->pose.shin / degree <= 28 + 1e-3);
    CHECK(ankle->pose.shin / degree > 27.9); // as far as the ankle goes
    CHECK(ankle->stopped_by.find("ankle") != std::string::npos);
}

TEST_CASE(
    "a value that is only just reached between two steps is found, and the highest one is the highest") {
    Setup pull{Lift::straight_bar_deadlift, Hold::bar_in_hands, Mass::kilograms(140)};
    pull.handle_height = Length::metres(0.3);
    pull.shin_lean = Angle::degrees(10);
    double highest = 0; // by walking in hundredths of a degree: the hip moment rises, then falls
    for (double shin = 12; shin < 18; shin += 0.01) {
        pull.shin_lean = Angle::degrees(shin);
        if (const auto pose = solve_pose(man(), pull))
            highest = std::max(highest, pose->lead->hip / 2);
    }
    REQUIRE(highest > 0);
    const auto ask = [&](double moment) {
        return search_setup(man(), pull, {}, {Target::hip_moment, moment, Varied::shin_lean, -20, 45});
    };
    const auto just = ask(highest - 0.02);
    REQUIRE(just);
    CHECK(just->reached);
    const auto again = solve_pose(man(), just->setup);
    REQUIRE(again);
    CHECK(std::abs(again->lead->hip / 2 - (highest - 0.02)) < 0.005);
    const auto more = ask(highest + 20);
    REQUIRE(more);
    CHECK_FALSE(more->reached);
    CHECK(more->value > highest - 0.001);
    CHECK(more->stopped_by == "Nothing in this range comes closer.");
}

TEST_CASE("a search that the lift cannot answer is refused") {
    CHECK(
        search_setup(man(), hex(), {}, {Target::knee_angle, 90, Varied::stance, 0.4, 1.4}).refusal().field ==
        "vary");
    CHECK(search_setup(man(), raised(), {}, {Target::knee_angle, 90, Varied::stance, 1.4, 0.4})
              .refusal()
              .code == RefusalCode::out_of_range);
    Setup hanging{Lift::pull_up, Hold::belt, Mass::kilograms(20)};
    hanging.elbow = Angle::degrees(90);
    CHECK(search_setup(man(), hanging, {}, {Target::knee_angle, 90, Varied::load, 0, 100}).refusal().field ==
          "lift");
    CHECK(search_setup(man(), raised(), {}, {Target::knee_angle, std::nan(""), Varied::stance, 0.4, 1.4})
              .refusal()
              .field == "wanted");
    CHECK(search_setup(man(), raised(), {}, {Target::knee_angle, 90, Varied::stance, 1.8, 2.0})
              .refusal()
              .code == RefusalCode::no_such_posture);
}
