// Bands of poses and equivalent loads obey their own definitions.
#include "body_mechanics/equivalent_load.h"

#include "setups_of_a_man.h"

#include <doctest/doctest.h>

#include <cmath>

using namespace amentum;

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
