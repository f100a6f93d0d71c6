// Each step of the planner by itself, against numbers worked by hand.
#include "planning/calendar_days.h"
#include "planning/exercise_classes.h"
#include "planning/methods.h"
#include "planning/plan_sets.h"
#include "planning/repetitions.h"
#include "planning/tests/invented_gym.h"
#include "planning/wave.h"

#include <doctest/doctest.h>

using namespace amentum;

TEST_CASE("repetitions possible follow Epley's line turned round, never below one") {
    // Epley 1985: 1RM = w (1 + n / 30). 100 kg x 10 -> 133.33, so 75 % allows 10; 100 x 6 -> 120, so 83.33 %
    // allows 6.
    CHECK(repetitions_possible(0.75) == 10);
    CHECK(repetitions_possible(100.0 / 120.0) == 6);
    CHECK(repetitions_possible(0.80) == 7); // 7.5
    CHECK(repetitions_possible(1.00) == 1);
    CHECK(repetitions_possible(1.20) == 1);
    const auto sets = repetitions_leaving(2, 0.80, Part::main_lift, Loading::trained);
    CHECK(sets.done == 5);
    CHECK(sets.reserve == 2);
    CHECK(repetitions_leaving(2, 0.40, Part::assistance, Loading::trained).reserve ==
          5); // 45 possible: not counted on
}

TEST_CASE("the wave rises three weeks, then keeps the intensity; leftover weeks join the meso before") {
    const auto four = plan_wave(4, Loading::trained);
    CHECK(four[0].fraction == doctest::Approx(0.75));
    CHECK(four[1].fraction == doctest::Approx(0.80));
    CHECK(four[2].fraction == doctest::Approx(0.85));
    CHECK(four[3].fraction == doctest::Approx(0.85));
    CHECK(four[3].reduced);
    const std::vector<std::pair<int, std::vector<int>>> lengths{
        {4, {4}},    {5, {5}},     {6, {6}},        {7, {4, 3}},       {8, {4, 4}},
        {9, {4, 5}}, {10, {4, 6}}, {11, {4, 4, 3}}, {16, {4, 4, 4, 4}}};
    for (const auto& [weeks, expected] : lengths) {
        std::vector<int> found;
        for (const auto& week : plan_wave(weeks, Loading::novice)) {
            found.resize(static_cast<std::size_t>(week.meso) + 1);
            ++found.back();
            CHECK(week.reduced == (week.week % 4 == 0));
        }
        CHECK_MESSAGE(found == expected, weeks);
    }
    for (const auto& week : plan_wave(16, Loading::youth))
        CHECK(week.fraction <= 0.70);
}

TEST_CASE("a reduced week has about half the sets, at least one a line") {
    CHECK(reduced_sets({3, 3, 2}) == std::vector<int>{2, 1, 1});
    CHECK(reduced_sets({5, 4, 3, 2}) == std::vector<int>{3, 2, 1, 1});
    CHECK(reduced_sets({1, 1}) == std::vector<int>{1, 1});
    CHECK(reduced_sets({}).empty());
}

TEST_CASE("exercise classes") {
    const invented::World world;
    CHECK(heavy_for_legs(world.exercise_called("hex_low")));
    CHECK(heavy_for_legs(world.exercise_called("step_up")));
    CHECK_FALSE(heavy_for_legs(world.exercise_called("box_jump")));
    CHECK_FALSE(heavy_for_legs(world.exercise_called("row_band")));
    CHECK(hard_on_tired_arm(world.exercise_called("kneeling_overhead_throw")));
    CHECK(hard_on_tired_arm(world.exercise_called("press_overhead")));
    CHECK_FALSE(hard_on_tired_arm(world.exercise_called("reach_wall")));
    CHECK(linear_throw(world.exercise_called("chest_pass")));
    CHECK_FALSE(linear_throw(world.exercise_called("rotational_throw")));
}

TEST_CASE(
    "48 hours before a start are the day and the two before it; the arm rests on the day and the one after") {
    const invented::World world;
    auto request = world.request();
    request.calendar = {world.entry(10, DayKind::start), world.entry(20, DayKind::off, 3),
                        world.entry(24, DayKind::travel)};
    const CalendarDays days(request);
    const Date start = invented::monday() + 10;
    for (int ahead = -1; ahead <= 3; ++ahead)
        CHECK(days.start_within_48_h(start - ahead).has_value() == (ahead >= 0 && ahead <= 2));
    for (int after = -1; after <= 2; ++after)
        CHECK(days.start_just_before(start + after).has_value() == (after == 0 || after == 1));
    CHECK(days.use_of(start) == DayUse::never);
    CHECK(days.use_of(invented::monday() + 22) == DayUse::never);
    CHECK(days.use_of(invented::monday() + 23) == DayUse::free);
    CHECK(days.use_of(invented::monday() + 24) == DayUse::last_resort);
    request.calendar[0].athlete = AthleteId{"somebody-else"};
    CHECK(days.use_of(start) == DayUse::free);
}

namespace {

LoadedSets loaded(const invented::World& world, const std::string& key, const BlockRequest& request,
                  int week = 2) {
    const KitLoads loads(request.kit);
    const auto wave = plan_wave(request.weeks, loading_of(request.athlete, request.start));
    return plan_sets(request, loads, world.exercise_called(key), wave[static_cast<std::size_t>(week - 1)]);
}

} // namespace

TEST_CASE("a load starts from the lower side of the estimate and is never above it") {
    const invented::World world;
    const auto sets = loaded(world, "hex_low", world.request());
    // 180 - 6 = 174 kg; 80 % = 139.2 kg = 306.88 lb. 60 lb bar, pairs 45 x 4, 25 x 2, 10 x 2, 5 x 2, 2.5 x 2:
    // 5 lb steps.
    CHECK(sets.load->pounds() == doctest::Approx(305));
    CHECK(sets.reps == 5);
    CHECK(*sets.reserve == 2);
    CHECK(*sets.intensity == doctest::Approx(0.80));
    CHECK(sets.words.find("low handles") != std::string::npos);
}

TEST_CASE("repetitions before load when the next load is more than a tenth heavier") {
    const invented::World world;
    // split_dumbbells: 66 kg; pairs of 40, 60, 80, 100 lb. 75, 80, 85 % = 109, 116, 124 lb: 100 lb each week.
    // 100 lb are 68.7 %: 13 possible; less 4, 3, 2 in reserve.
    for (int week = 1; week <= 3; ++week) {
        const auto sets = loaded(world, "split_dumbbells", world.request(), week);
        CHECK(sets.load->pounds() == doctest::Approx(100));
        CHECK(sets.reps == 8 + week);
        CHECK(*sets.reserve == 5 - week);
        CHECK(sets.shaped_by.find("repetitions instead of load") != std::string::npos);
    }
}

TEST_CASE("pull-ups count body mass: plates, body mass alone, or help") {
    const invented::World world;
    auto request = world.request();
    // 115 - 4 = 111 kg; 85 % = 94.35; less 88 = 6.35 kg = 14.0 lb; plates 10 + 2.5.
    CHECK(loaded(world, "pull_up_plate", request, 3).load->pounds() == doctest::Approx(12.5));
    // 75 % = 83.25 kg is below body mass, which is 79.3 % of 111: 7 possible, 5 done.
    const auto own = loaded(world, "pull_up_plate", request, 1);
    CHECK_FALSE(own.load);
    CHECK(own.words == "body mass alone");
    CHECK(own.reps == 5);
    // 92 - 2 = 90 kg: body mass is 97.8 %, nothing to spare; 75 % = 67.5 kg, help with 20.5 kg = 45 lb.
    request.maxima["pull_max"] = {92, 2};
    const auto helped = loaded(world, "pull_up_plate", request, 1);
    CHECK_FALSE(helped.load);
    CHECK(helped.words == "assisted with a band, taking about 45 lb");
    request.body_mass.reset();
    CHECK(loaded(world, "pull_up_plate", request, 1).words ==
          "first week: find the load that leaves 2 in reserve");
}

TEST_CASE("no estimate: the reserve is prescribed, not a load") {
    const invented::World world;
    auto request = world.request();
    request.maxima.clear();
    request.athlete = invented::thrower(20, 0.5);
    const auto sets = loaded(world, "hex_low", request, 1);
    CHECK_FALSE(sets.load);
    CHECK_FALSE(sets.intensity);
    CHECK(*sets.reserve == 3);
    CHECK(sets.words == "first week: find the load that leaves 3 in reserve");
}

TEST_CASE("balls and bands by what the kit has") {
    invented::World world;
    const auto request = world.request();
    CHECK(loaded(world, "kneeling_overhead_throw", request).load->pounds() ==
          doctest::Approx(4));                                                              // of 4 and 6
    CHECK(loaded(world, "chest_pass", request).load->pounds() == doctest::Approx(4));       // of 2, 4, 6, 8
    CHECK(loaded(world, "rotational_throw", request).load->pounds() == doctest::Approx(6)); // of 2 ... 12
    CHECK(loaded(world, "outward_band", request).words ==
          "red band or blue band: the one that leaves 3 in reserve");
    world.exercise_list[13].lightest = Mass::pounds(9); // a chest pass with nothing at or below 8 lb left
    CHECK_FALSE(KitLoads(request.kit).has_all_for(world.exercise_list[13]));
}

TEST_CASE("the training wave as a method") {
    const auto method = planning::methods().front();
    const auto arguments = check_arguments(method.inputs, {{"week", "3"}});
    REQUIRE(arguments);
    const auto answer = method.run(*arguments);
    REQUIRE(answer);
    CHECK(answer->outputs[0].value == doctest::Approx(0.85));
    CHECK(answer->outputs[1].value == 3); // 30 (1 / 0.85 - 1) = 5.29: 5 possible, 2 left
    const auto outside = check_arguments(method.inputs, {{"week", "5"}, {"weeks", "4"}});
    REQUIRE(outside);
    CHECK_FALSE(method.run(*outside));
}
