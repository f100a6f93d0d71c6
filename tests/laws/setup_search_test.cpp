// Searching for a set-up: what is found is what was wanted, what is not found says what stops it, bands and equivalent
// loads obey their own definitions.
#include "body_mechanics/equivalent_load.h"
#include "body_mechanics/holds.h"
#include "body_mechanics/search_setup.h"

#include "on_disk_tables.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <numbers>

using namespace amentum;

namespace {

constexpr double degree = std::numbers::pi / 180;

Body body_of(Sex sex, double stature, double mass) {
    return *scale_body(segments_on_disk(),
                       {BodyTable::de_leva, sex, Length::metres(stature), Mass::kilograms(mass)});
}
Body man() {
    return body_of(Sex::male, 1.80, 80);
}

Setup raised(Hold hold = Hold::straight_bar, double load = 60) {
    Setup setup{Lift::rear_foot_raised_split_squat, hold, Mass::kilograms(load)};
    setup.stance = Length::metres(0.80);
    setup.pad_height = Length::metres(0.40);
    setup.thigh = Angle::degrees(90);
    setup.trunk_lean = Angle::degrees(20);
    return setup;
}

Setup hex() {
    Setup setup{Lift::hex_bar_deadlift, Hold::hex_bar, Mass::kilograms(140)};
    setup.handle_height = Length::metres(0.3);
    setup.shin_lean = Angle::degrees(20);
    return setup;
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
        CHECK(again->hip_share() == found->pose.hip_share());
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

TEST_CASE("a band is the root of the sum of its causes' squares, and the rear foot's share leads it") {
    for (const Setup& setup : {raised(), raised(Hold::dumbbells), hex()}) {
        const auto pose = solve_pose(man(), setup);
        REQUIRE(pose);
        const PoseBand band = estimate_pose_band(man(), setup, *pose);
        double knee = 0, hip = 0;
        for (const auto& cause : band.causes) {
            knee += cause.knee * cause.knee;
            hip += cause.hip * cause.hip;
        }
        CHECK(band.knee.standard_error == doctest::Approx(std::sqrt(knee)));
        CHECK(band.hip.standard_error == doctest::Approx(std::sqrt(hip)));
        CHECK(band.knee.value == pose->lead->knee);
        CHECK(band.not_moved.empty());
        CHECK(band.per_centimetre.size() == 3);
    }
    const auto pose = solve_pose(man(), raised());
    const PoseBand band = estimate_pose_band(man(), raised(), *pose);
    for (const auto& cause : band.causes)
        if (cause.cause != Cause::rear_share)
            CHECK(std::abs(cause.knee) < std::abs(band.causes.front().knee));
    CHECK(band.causes.front().cause == Cause::rear_share);
}

TEST_CASE("the share's part of the band is the half difference of poses at the share's two ends") {
    Setup low = raised(), high = raised();
    low.rear_share = 0.1564 - 0.036;
    high.rear_share = 0.1564 + 0.036;
    const auto a = solve_pose(man(), low), b = solve_pose(man(), high), middle = solve_pose(man(), raised());
    const PoseBand band = estimate_pose_band(man(), raised(), *middle);
    CHECK(band.causes.front().knee == doctest::Approx((b->lead->knee - a->lead->knee) / 2));
    CHECK(*band.causes.front().hip_share == doctest::Approx((*b->hip_share() - *a->hip_share()) / 2));
}

TEST_CASE("a woman's thigh is less certain by the tables than a man's, and a tape settles it") {
    const auto knee_by_thigh = [](const Body& body) {
        Setup setup = raised();
        setup.thigh = Angle::degrees(80);
        const auto pose = solve_pose(body, setup);
        REQUIRE(pose);
        for (const auto& cause : estimate_pose_band(body, setup, *pose).causes)
            if (cause.cause == Cause::thigh)
                return std::abs(cause.knee);
        return 0.0;
    };
    const Body woman = body_of(Sex::female, 1.72, 68);
    const Body taped = *scale_body(segments_on_disk(), {BodyTable::de_leva,
                                                        Sex::female,
                                                        Length::metres(1.72),
                                                        Mass::kilograms(68),
                                                        {{Segment::thigh, woman.parts[2].length}}});
    CHECK(woman.parts[2].segment == Segment::thigh);
    CHECK(knee_by_thigh(woman) > 2 * knee_by_thigh(man()));
    CHECK(knee_by_thigh(taped) < 0.5 * knee_by_thigh(woman));
}

TEST_CASE("the same hold asks for the same load; there and back is the same load again") {
    for (const Demand demand : {Demand::leg, Demand::hip, Demand::knee}) {
        const auto same = solve_equivalent_load(man(), raised(), raised(), demand);
        REQUIRE(same);
        CHECK(same->load.kilograms() == doctest::Approx(60).epsilon(1e-6));
        const auto there = solve_equivalent_load(man(), raised(), raised(Hold::dumbbells), demand);
        REQUIRE(there);
        const auto back =
            solve_equivalent_load(man(), raised(Hold::dumbbells, there->load.kilograms()), raised(), demand);
        REQUIRE(back);
        CHECK(back->load.kilograms() == doctest::Approx(60).epsilon(1e-6));
    }
}

TEST_CASE("at one depth the leg as a whole asks for the same load however it is held; the knee does not") {
    for (const Hold hold : {Hold::safety_bar, Hold::front_bar, Hold::dumbbells, Hold::goblet}) {
        const auto leg = solve_equivalent_load(man(), raised(), raised(hold), Demand::leg);
        REQUIRE(leg);
        CHECK(leg->load.kilograms() ==
              doctest::Approx(60).epsilon(1e-6));             // H + K = F (K.x - H.x), by statics
        CHECK(*leg->to.hip_share() > *leg->from.hip_share()); // load further ahead: more hip
    }
    const auto knee = solve_equivalent_load(man(), raised(), raised(Hold::dumbbells), Demand::knee);
    REQUIRE(knee);
    CHECK(knee->load.kilograms() > 70);
    CHECK(knee->to.lead->knee == doctest::Approx(knee->from.lead->knee).epsilon(1e-6));
    CHECK(solve_equivalent_load(man(), raised(), raised(Hold::goblet), Demand::knee).refusal().code ==
          RefusalCode::method_does_not_apply);
}

TEST_CASE(
    "a squat's load for one leg of a split squat: there and back, and the rear foot's share is in the band") {
    Setup squat{Lift::back_squat, Hold::straight_bar, Mass::kilograms(120)};
    squat.knee = Angle::degrees(90);
    squat.trunk_lean = Angle::degrees(30);
    const auto to_split = solve_equivalent_load(man(), squat, raised());
    REQUIRE(to_split);
    CHECK(to_split->not_moved.empty());
    CHECK(to_split->from.lead->knee + to_split->from.lead->hip == // two legs against one
          doctest::Approx(2 * (to_split->to.lead->knee + to_split->to.lead->hip)).epsilon(1e-6));
    const auto back =
        solve_equivalent_load(man(), raised(Hold::straight_bar, to_split->load.kilograms()), squat);
    REQUIRE(back);
    CHECK(back->load.kilograms() == doctest::Approx(120).epsilon(1e-6));
    // H + K = (1 - share) W (K.x - H.x) less the leg's own weight, so a load that keeps it needs (1 - share) W constant:
    // d load = W / g * 0.036 / (1 - 0.1564), of the 80 kg and the load together. All other causes only widen the band.
    const double from_share = (80 + to_split->load.kilograms()) * 0.036 / (1 - 0.1564);
    CHECK(to_split->standard_error > 0.99 * from_share);
    CHECK(to_split->standard_error < 3 * from_share);
}

TEST_CASE("a pull-up asks nothing of the legs, in either place") {
    Setup hanging{Lift::pull_up, Hold::belt, Mass::kilograms(20)};
    hanging.elbow = Angle::degrees(90);
    for (const auto& [from, to] : {std::pair{hanging, raised()}, std::pair{raised(), hanging}}) {
        const auto same = solve_equivalent_load(man(), from, to);
        REQUIRE_FALSE(same);
        CHECK(same.refusal().code == RefusalCode::method_does_not_apply);
        CHECK(same.refusal().field == "lift");
    }
}

TEST_CASE("a length twice as uncertain adds twice as much to the band") {
    Body body = man();
    const auto pose = solve_pose(body, raised());
    const PoseBand narrow = estimate_pose_band(body, raised(), *pose);
    body.trunk.length_error *= 2; // a small move: nearly straight
    const PoseBand wide = estimate_pose_band(body, raised(), *pose);
    CHECK(wide.knee.standard_error > narrow.knee.standard_error);
    CHECK(wide.hip.standard_error > narrow.hip.standard_error);
    for (std::size_t i = 0; i < narrow.causes.size(); ++i) {
        const double times = narrow.causes[i].cause == Cause::trunk ? 2 : 1;
        CHECK(wide.causes[i].knee == doctest::Approx(times * narrow.causes[i].knee).epsilon(0.01));
    }
}
