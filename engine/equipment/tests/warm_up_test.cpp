// Ramps and additions on small kits, worked by hand from the rules in the headers.
#include "equipment/methods.h"
#include "equipment/stack_moves.h"
#include "equipment/to_add.h"
#include "equipment/warm_up.h"

#include "kits_for_tests.h"

#include <doctest/doctest.h>

using namespace amentum;
using namespace amentum::equipment_tests;

TEST_CASE("a ramp to 100 kg on a full kilogram kit") {
    const auto kit = kilogram_kit({{25, 2}, {20, 2}, {15, 2}, {10, 2}, {5, 2}, {2.5, 2}, {1.25, 2}});
    const auto ramp = plan_warm_up(kit, LoadMeans::straight_bar, Mass::kilograms(100));
    REQUIRE(ramp);
    REQUIRE(ramp->steps.size() == 3);
    CHECK(ramp->steps[0].load.total.kilograms() == doctest::Approx(40)); // 10 a side
    CHECK(ramp->steps[1].load.total.kilograms() == doctest::Approx(60)); // 20 a side: one off, one on
    CHECK(ramp->steps[2].load.total.kilograms() == doctest::Approx(80)); // 30 a side as 25 + 5
    CHECK(ramp->steps[2].load.words == "bar + 25, 5 a side");
    CHECK(ramp->steps[0].moves == 1);
    CHECK(ramp->steps[1].moves == 2);
    CHECK(ramp->steps[2].moves == 3);
    CHECK(ramp->moves_to_working == 2); // 25, 5 -> 25, 15
    CHECK(ramp->moves == 8);
    CHECK(ramp->steps[0].reps == 6);
}

TEST_CASE("the ramp never reaches the working load, and repeats no step") {
    const auto kit = kilogram_kit({{10, 2}}); // 20 and 40 only
    const auto ramp = plan_warm_up(kit, LoadMeans::straight_bar, Mass::kilograms(45));
    REQUIRE(ramp);
    CHECK(ramp->working.total.kilograms() == doctest::Approx(40));
    REQUIRE(ramp->steps.size() == 1);
    CHECK(ramp->steps[0].load.words == "bar alone");
    CHECK(plan_warm_up(kit, LoadMeans::straight_bar, Mass::kilograms(20))->steps.empty());
    CHECK(plan_warm_up(kit, LoadMeans::straight_bar, Mass::kilograms(15)).refusal().code ==
          RefusalCode::load_not_makeable);
}

TEST_CASE("one bar serves the whole ramp") {
    const auto ramp = plan_warm_up(pound_kit(), LoadMeans::hex_bar, Mass::pounds(315), "high handles");
    REQUIRE(ramp);
    REQUIRE(ramp->steps.size() == 4); // 315 lb is above 140 kg
    for (const auto& step : ramp->steps)
        CHECK(step.load.item == "hex bar, high handles");
    CHECK(ramp->steps.back().reps == 1);
}

TEST_CASE("dumbbells need no plates moved") {
    const auto ramp = plan_warm_up(pound_kit(), LoadMeans::dumbbell_pair, Mass::pounds(100));
    REQUIRE(ramp);
    REQUIRE(ramp->steps.size() == 1); // 80 % of 100 lb; below that, the lightest pair is the same 40s
    CHECK(ramp->steps[0].load.words == "pair of 40 lb dumbbells");
    CHECK(ramp->moves == 0);
}

TEST_CASE("what to add: exact suggestions first, then the nearer") {
    const auto kit = kilogram_kit({{20, 2}, {15, 2}, {10, 2}});
    const auto additions = solve_to_add(kit, LoadMeans::straight_bar, Mass::kilograms(62.5));
    REQUIRE(additions);
    REQUIRE_FALSE(additions->empty());
    CHECK(additions->front().what == "a pair of 1.25 kg plates");
    CHECK(additions->front().would_make.total.kilograms() == doctest::Approx(62.5));
    CHECK(additions->size() == 1); // with 1 kg: 62, off by 0.8 %; no other pair comes nearer than that
    CHECK(solve_to_add(kit, LoadMeans::straight_bar, Mass::kilograms(60))->empty());
    CHECK(solve_to_add(kit, LoadMeans::ball, Mass::kilograms(2)).refusal().code ==
          RefusalCode::method_does_not_apply);
}

TEST_CASE("what to add within half a percent") {
    const auto kit = kilogram_kit({{25, 2}, {20, 2}, {10, 2}});
    // 131 kg: 130 is 0.76 % below; a pair of 0.5 kg makes 131, a pair of 0.25 kg makes 130.5 (0.38 % below).
    const auto additions = solve_to_add(kit, LoadMeans::straight_bar, Mass::kilograms(131));
    REQUIRE(additions);
    REQUIRE(additions->size() == 2);
    CHECK((*additions)[0].what == "a pair of 0.5 kg plates");
    CHECK((*additions)[1].what == "a pair of 0.25 kg plates");
}

TEST_CASE("the methods answer, and refuse an argument that is not theirs") {
    for (const auto& method : equipment::methods()) {
        const auto wrong = check_arguments(method.inputs, {{"no_such_input", "1"}});
        CHECK(wrong.refusal().code == RefusalCode::unknown_field);
    }
}
