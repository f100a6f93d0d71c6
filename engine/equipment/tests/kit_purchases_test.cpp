#include "equipment/kit_purchases.h"
#include "equipment/stamped_mass.h"
#include "equipment/tests/kits_for_tests.h"

#include <doctest/doctest.h>

using namespace amentum;
using namespace amentum::equipment_tests;

namespace {

PrescribedLoad on_bar(double kg, int times) {
    return {LoadMeans::straight_bar, {}, Mass::kilograms(kg), times};
}

} // namespace

// Bar 20 kg and pairs of 20, 15, 10: 62.5 is 60, lacking 2.5 = a whole small step.
TEST_CASE("ten sets at 62.5 kg want a pair of 1.25 kg plates") {
    const auto answer = solve_kit_purchases(kilogram_kit({{20, 2}, {15, 2}, {10, 2}}), {on_bar(62.5, 10)});
    CHECK(answer.now.asked == 10);
    CHECK(answer.now.made == 0);
    CHECK(answer.now.lacking == doctest::Approx(2.5 / 62.5));
    REQUIRE_FALSE(answer.best.empty());
    CHECK(answer.best.front().what == "a pair of 1.25 kg plates");
    CHECK(answer.best.front().then.made == 10);
    CHECK(answer.best.front().then.exactly == 10);
    CHECK(answer.best.front().then.lacking == doctest::Approx(0));
}

TEST_CASE("the purchase that makes more sets comes first") {
    // 110 + 2 x 5 = 120 needs a pair of 5; 62.5 needs 1.25. The first is asked for more often.
    const auto answer =
        solve_kit_purchases(kilogram_kit({{20, 2}, {15, 2}, {10, 2}}), {on_bar(62.5, 2), on_bar(120, 9)});
    REQUIRE_FALSE(answer.best.empty());
    CHECK(answer.best.front().what == "a pair of 5 kg plates");
    CHECK(answer.best.front().then.made == 9);
}

TEST_CASE("loads that are all made want nothing, and band work is not counted") {
    const auto answer = solve_kit_purchases(kilogram_kit({{20, 2}}),
                                            {on_bar(60, 3), {LoadMeans::band, {}, Mass::kilograms(5), 4}});
    CHECK(answer.now.asked == 3);
    CHECK(answer.now.exactly == 3);
    CHECK(answer.best.empty());
}

TEST_CASE("a kit without the tool: a first bar, a first pair of dumbbells") {
    Kit kit = kilogram_kit({{20, 2}});
    const auto answer = solve_kit_purchases(kit, {{LoadMeans::dumbbell_pair, {}, Mass::kilograms(40), 6}});
    CHECK(answer.now.made == 0);
    CHECK(answer.now.lacking == doctest::Approx(1));
    REQUIRE_FALSE(answer.best.empty());
    CHECK(answer.best.front().what == "a pair of 20 kg dumbbells");
}

TEST_CASE("a label names the mass stamped on the item, or none") {
    CHECK(stamped_mass("35 lb plate, old")->pounds() == doctest::Approx(35));
    CHECK(stamped_mass("2.5kg plate")->kilograms() == doctest::Approx(2.5));
    CHECK(stamped_mass("no. 3 plate, 45 lbs")->pounds() == doctest::Approx(45));
    CHECK_FALSE(stamped_mass("hex bar, low handles"));
    CHECK_FALSE(stamped_mass("45 cm box"));
    CHECK_FALSE(stamped_mass("7 labels"));
    CHECK_FALSE(stamped_mass(""));
}
