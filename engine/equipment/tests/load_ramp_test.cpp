#include "equipment/load_ramp.h"
#include "equipment/tests/kits_for_tests.h"

#include <doctest/doctest.h>

using namespace amentum;
using namespace amentum::equipment_tests;

namespace {

RampWanted on_bar(std::vector<double> pounds) {
    RampWanted wanted{LoadMeans::straight_bar, {}, {}};
    for (const double lb : pounds)
        wanted.loads.push_back(Mass::pounds(lb));
    return wanted;
}

} // namespace

TEST_CASE("one bar for all sets, plates from the inside, moves from empty to empty") {
    const auto ramp = *solve_load_ramp(pound_kit(), on_bar({135, 185, 135}));
    REQUIRE(ramp.sets.size() == 3);
    CHECK(ramp.item == "straight bar");
    CHECK(ramp.sets[0].load.words == "straight bar + 45 a side");
    CHECK(ramp.sets[1].load.words == "straight bar + 45, 25 a side");
    CHECK(ramp.sets[1].moves == 1);
    CHECK(ramp.strip == 1);
    CHECK(ramp.moves == 4);
    CHECK(ramp.proven);
}

TEST_CASE("an empty bar has no plate to handle") {
    const auto ramp = *solve_load_ramp(pound_kit(), on_bar({45}));
    CHECK(ramp.moves == 0);
    CHECK(ramp.sets[0].load.words == "straight bar alone");
}

TEST_CASE("a load that is not makeable becomes the nearest, as load_bar says it") {
    const auto ramp = *solve_load_ramp(pound_kit(), on_bar({227}));
    CHECK(ramp.sets[0].load.total.pounds() == doctest::Approx(225));
    CHECK(ramp.sets[0].wanted.pounds() == doctest::Approx(227));
}

TEST_CASE("a landmine takes single plates on its one sleeve") {
    RampWanted wanted{LoadMeans::landmine, {}, {Mass::pounds(22.5 + 45), Mass::pounds(22.5 + 50)}};
    const auto ramp = *solve_load_ramp(pound_kit(), wanted);
    CHECK(ramp.stacks == 1);
    CHECK(ramp.moves == 4);
    CHECK(ramp.sets[1].load.words == "landmine, straight bar + 45, 5 on the sleeve");
}

TEST_CASE("refused: no set, too many, no plates to handle, out of range") {
    CHECK(solve_load_ramp(pound_kit(), on_bar({})).refusal().code == RefusalCode::missing_field);
    CHECK(solve_load_ramp(pound_kit(), on_bar(std::vector<double>(25, 135))).refusal().code ==
          RefusalCode::out_of_range);
    CHECK(solve_load_ramp(pound_kit(), on_bar({-5})).refusal().code == RefusalCode::out_of_range);
    CHECK(solve_load_ramp(pound_kit(), {LoadMeans::ball, {}, {Mass::pounds(4)}}).refusal().code ==
          RefusalCode::method_does_not_apply);
}
