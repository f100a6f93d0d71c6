// Each means counts its load as solve_load.h says; sums done by hand.
#include "equipment/solve_load.h"

#include "kits_for_tests.h"

#include <doctest/doctest.h>

using namespace amentum;
using namespace amentum::equipment_tests;

TEST_CASE("a bar is spoken of by its plates, heaviest first") {
    const auto choice = solve_load(pound_kit(), LoadMeans::straight_bar, Mass::pounds(190));
    REQUIRE(choice);
    CHECK(choice->nearest.total.pounds() == doctest::Approx(190));
    CHECK(choice->nearest.words == "straight bar + 45, 25, 2.5 a side"); // 45 + 2 x 72.5
    CHECK(choice->nearest.item == "straight bar");
}

TEST_CASE("the empty bar is a load, and nothing is not above a lighter target") {
    const auto choice = solve_load(pound_kit(), LoadMeans::straight_bar, Mass::pounds(30));
    REQUIRE(choice);
    CHECK_FALSE(choice->not_above);
    CHECK(choice->nearest.words == "straight bar alone");
    CHECK(choice->above->total.pounds() == doctest::Approx(45));
}

TEST_CASE("at the top of the gym nothing is above") {
    // 45 + 2 x (3 x 45 + 35 + 25 + 2 x 10 + 5 + 2.5) = 490
    const auto choice = solve_load(pound_kit(), LoadMeans::straight_bar, Mass::pounds(600));
    REQUIRE(choice);
    CHECK_FALSE(choice->above);
    CHECK(choice->nearest.total.pounds() == doctest::Approx(490));
}

TEST_CASE("a bar is named by its label or a part of it") {
    const auto high = solve_load(pound_kit(), LoadMeans::hex_bar, Mass::pounds(200), "high handles");
    REQUIRE(high);
    CHECK(high->nearest.item == "hex bar, high handles");
    CHECK(high->nearest.words == "hex bar, high handles + 45, 25 a side");
    const auto none = solve_load(pound_kit(), LoadMeans::hex_bar, Mass::pounds(200), "middle handles");
    REQUIRE_FALSE(none);
    CHECK(none.refusal().code == RefusalCode::load_not_makeable);
}

TEST_CASE("an odd plate stays on the rack, but two labels of one mass make a pair") {
    Kit kit = kilogram_kit({{10, 3}});
    const auto loads = all_loads(kit, LoadMeans::straight_bar);
    REQUIRE(loads);
    CHECK(loads->size() == 2); // 20 and 40
    kit.items.push_back(item(ItemKind::plate, "old 10 kg plate", 1, Mass::kilograms(10)));
    CHECK(all_loads(kit, LoadMeans::straight_bar)->back().total.kilograms() == doctest::Approx(60));
}

TEST_CASE("dumbbells in pairs are two of one mass; singly a kettlebell serves too") {
    const auto pair = all_loads(pound_kit(), LoadMeans::dumbbell_pair);
    REQUIRE(pair);
    REQUIRE(pair->size() == 2); // the single 45 has no twin
    CHECK(pair->back().total.pounds() == doctest::Approx(100));
    CHECK(pair->back().words == "pair of 50 lb dumbbells");
    const auto single = solve_load(pound_kit(), LoadMeans::dumbbell_single, Mass::kilograms(23.5));
    REQUIRE(single);
    CHECK(single->nearest.words == "24 kg kettlebell");
}

TEST_CASE("a column gives the force at the handle, a ball itself") {
    const auto column = solve_load(pound_kit(), LoadMeans::column, Mass::pounds(31));
    REQUIRE(column);
    CHECK(column->nearest.total.pounds() == doctest::Approx(30));
    CHECK(column->nearest.words == "cable column, stack at 60 lb");
    const auto ball = solve_load(pound_kit(), LoadMeans::ball, Mass::pounds(5)); // a tie: the lower
    REQUIRE(ball);
    CHECK(ball->nearest.words == "4 lb ball");
}

TEST_CASE("one stack: landmine, belt and sled take plates singly") {
    const auto landmine = solve_load(pound_kit(), LoadMeans::landmine, Mass::pounds(22.5 + 15));
    REQUIRE(landmine);
    CHECK(landmine->nearest.words == "landmine, straight bar + 10, 5 on the sleeve");
    CHECK(landmine->nearest.total.pounds() == doctest::Approx(37.5));
    const auto belt = all_loads(pound_kit(), LoadMeans::added_plate);
    REQUIRE(belt);
    CHECK(belt->front().total.pounds() == doctest::Approx(2.5));
    CHECK(belt->back().total.pounds() == doctest::Approx(180)); // four plates at most: 4 x 45
    const auto sled = all_loads(pound_kit(), LoadMeans::sled);
    REQUIRE(sled);
    CHECK(sled->back().total.pounds() == doctest::Approx(6 * 45 + 70 + 50 + 40 + 10 + 5));
}

TEST_CASE("what cannot be loaded is refused, in words") {
    Kit kit = pound_kit();
    CHECK(solve_load(kit, LoadMeans::safety_bar, Mass::pounds(100)).refusal().code ==
          RefusalCode::load_not_makeable);
    CHECK(solve_load(kit, LoadMeans::band, Mass::pounds(1)).refusal().code ==
          RefusalCode::method_does_not_apply);
    CHECK(solve_load(kit, LoadMeans::straight_bar, Mass::kilograms(0)).refusal().code ==
          RefusalCode::out_of_range);
    CHECK(solve_load(kit, LoadMeans::straight_bar, Mass::kilograms(600.1)).refusal().code ==
          RefusalCode::out_of_range);
    kit.items.push_back(item(ItemKind::plate, "plate without a stamp", 2));
    const auto unweighed = solve_load(kit, LoadMeans::straight_bar, Mass::pounds(100));
    REQUIRE_FALSE(unweighed);
    CHECK(unweighed.refusal().field == "plate without a stamp");
}
