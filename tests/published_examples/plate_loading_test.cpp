// Plate loading against worked sums.
//
// Masses of discs and bars: the sets of international weightlifting and of common pound plates; 1 lb =
// 0.45359237 kg exactly (NIST SP 811, appendix B.8). The multisets were counted by hand as products of (pairs
// + 1): 3 x 2^4 = 48, and 4 x 2 x 2 x 3 x 2 x 2 = 192; their distinct sums by a separate enumeration written
// for that.
#include "equipment/load_ramp.h"
#include "equipment/methods.h"
#include "equipment/solve_load.h"
#include "equipment/stack_choices.h"
#include "equipment/stack_moves.h"

#include <doctest/doctest.h>

using namespace amentum;

namespace {

Kit kit_of(MassUnit unit, double bar, std::initializer_list<std::pair<double, int>> pairs) {
    const auto mass = [&](double x) { return unit == MassUnit::kg ? Mass::kilograms(x) : Mass::pounds(x); };
    Kit kit{KitId{"kit"}, "kit", unit, {{ItemKind::straight_bar, "bar", 1, mass(bar), {}, {}, {}, {}}}};
    int number = 0;
    for (const auto& [each, count] : pairs)
        kit.items.push_back(
            {ItemKind::plate, "plate " + std::to_string(++number), 2 * count, mass(each), {}, {}, {}, {}});
    return kit;
}

const Kit six_kg = kit_of(MassUnit::kg, 20, {{20, 2}, {10, 1}, {5, 1}, {2.5, 1}, {1.25, 1}});
const Kit six_lb = kit_of(MassUnit::lb, 45, {{45, 3}, {35, 1}, {25, 1}, {10, 2}, {5, 1}, {2.5, 1}});

double makes_kg(const Kit& kit, double target) {
    return solve_load(kit, LoadMeans::straight_bar, Mass::kilograms(target))->nearest.total.kilograms();
}

std::vector<double> one_side_kg(const MadeLoad& load) {
    std::vector<double> plates;
    for (const auto& plate : load.one_side)
        plates.insert(plates.end(), plate.count, plate.each.kilograms());
    return plates;
}

} // namespace

TEST_CASE("pairs 20 x 2, 10, 5, 2.5, 1.25 kg: 48 distinct loads, the largest side 58.75 kg") {
    const auto loads = *all_loads(six_kg, LoadMeans::straight_bar);
    CHECK(loads.size() == 48);
    CHECK(loads.back().total.kilograms() == doctest::Approx(20 + 2 * 58.75).epsilon(1e-12));
    CHECK(makes_kg(six_kg, 137.5) == doctest::Approx(137.5).epsilon(1e-12));
    const auto choice = *solve_load(six_kg, LoadMeans::straight_bar, Mass::kilograms(101));
    CHECK(choice.nearest.total.kilograms() == doctest::Approx(100).epsilon(1e-12));
    CHECK(choice.above->total.kilograms() == doctest::Approx(102.5).epsilon(1e-12));
}

TEST_CASE("pairs 45 x 3, 35, 25, 10 x 2, 5, 2.5 lb: 90 distinct loads, the largest side 222.5 lb") {
    const auto loads = *all_loads(six_lb, LoadMeans::straight_bar);
    CHECK(loads.size() == 90);
    CHECK(loads.back().total.pounds() == doctest::Approx(45 + 2 * 222.5).epsilon(1e-12));
    const auto choice = *solve_load(six_lb, LoadMeans::straight_bar, Mass::pounds(227));
    CHECK(choice.nearest.total.pounds() == doctest::Approx(225).epsilon(1e-12));
    CHECK(choice.above->total.pounds() == doctest::Approx(230).epsilon(1e-12));
    CHECK(choice.nearest.total.kilograms() == doctest::Approx(102.058).epsilon(1e-5)); // 225 lb
}

TEST_CASE("pairs 20, 15, 10 kg only: 62.5 becomes 60") {
    CHECK(makes_kg(kit_of(MassUnit::kg, 20, {{20, 1}, {15, 1}, {10, 1}}), 62.5) == doctest::Approx(60));
}

TEST_CASE("bar 20 kg, target 100: 25 + 15 a side") {
    const Kit kit =
        kit_of(MassUnit::kg, 20, {{25, 1}, {20, 1}, {15, 1}, {10, 1}, {5, 1}, {2.5, 1}, {1.25, 1}});
    const auto choice = *solve_load(kit, LoadMeans::straight_bar, Mass::kilograms(100));
    CHECK(one_side_kg(choice.nearest) == std::vector<double>{25, 15});
}

TEST_CASE("a 45 lb bar is 20.41165665 kg, not 20") {
    const auto bar = *solve_load(six_lb, LoadMeans::straight_bar, Mass::pounds(45));
    CHECK(bar.not_above->total.kilograms() == doctest::Approx(20.41165665).epsilon(1e-12));
}

TEST_CASE("plates handled on one side: 100 -> 105 is 1, 60 -> 100 is 3, 100 -> 100 is 0") {
    const Kit kit =
        kit_of(MassUnit::kg, 20, {{25, 4}, {20, 1}, {15, 1}, {10, 1}, {5, 1}, {2.5, 1}, {1.25, 1}});
    const auto stack = [&](double kg) {
        return solve_load(kit, LoadMeans::straight_bar, Mass::kilograms(kg))->nearest.one_side;
    };
    CHECK(stack_moves(stack(100), stack(105)) == 1);
    CHECK(stack_moves(stack(60), stack(100)) == 3);
    CHECK(stack_moves(stack(100), stack(100)) == 0);
}

// The multisets themselves, walked one by one for every side load: 3 x 2^4 = 48 and 4 x 2 x 2 x 3 x 2 x 2 = 192.
TEST_CASE("48 multisets of the first plates, 192 of the second") {
    for (const auto& [kit, multisets] : {std::pair{&six_kg, 48u}, std::pair{&six_lb, 192u}}) {
        const auto stock = *stock_of(*kit);
        PlateCounts pairs;
        for (std::size_t kind = 0; kind < stock.each.size(); ++kind)
            pairs.of[kind] = static_cast<std::uint8_t>(stock.singly[kind] / 2);
        std::size_t found = 0;
        const auto loads = *all_loads(*kit, LoadMeans::straight_bar);
        for (const auto& load : loads) {
            ExactMass side = 0;
            for (const auto& plates : load.one_side)
                side += plates.count * exact_mass(plates.each);
            const auto choices = stack_choices(side, stock.each, pairs, 99);
            CHECK(choices.complete);
            found += choices.all.size();
        }
        CHECK(found == multisets);
    }
}

TEST_CASE("plates handled are a metric on the loads 40, 42.5 ... 180 kg") {
    const Kit kit =
        kit_of(MassUnit::kg, 20, {{25, 3}, {20, 1}, {15, 1}, {10, 1}, {5, 1}, {2.5, 1}, {1.25, 1}});
    std::vector<std::vector<PlatesOnSide>> stacks;
    for (double load = 40; load <= 180; load += 2.5)
        stacks.push_back(solve_load(kit, LoadMeans::straight_bar, Mass::kilograms(load))->nearest.one_side);
    REQUIRE(stacks.size() == 57);
    for (const auto& a : stacks)
        for (const auto& b : stacks) {
            REQUIRE(stack_moves(a, b) == stack_moves(b, a));
            for (const auto& c : stacks)
                REQUIRE(stack_moves(a, c) <= stack_moves(a, b) + stack_moves(b, c));
        }
}

// By hand, one side: 20; 25 20; 20 is two plates at most at once and two intervals, so four handlings.
TEST_CASE("a ramp by hand: 60, 110, 60 kg is four handlings, not the eight of heaviest inside") {
    const Kit kit = kit_of(MassUnit::kg, 20, {{25, 1}, {20, 1}});
    const Mass light = Mass::kilograms(60), heavy = Mass::kilograms(110);
    const auto ramp = *solve_load_ramp(kit, {LoadMeans::straight_bar, {}, {light, heavy, light}});
    CHECK(ramp.moves == 4);
    CHECK(ramp.usual_moves == 8); // 20; off 20, on 25 20; off 20 25, on 20; off: 1 + 3 + 3 + 1
    CHECK(ramp.proven);
    CHECK(one_side_kg(ramp.sets[1].load) == std::vector<double>{20, 25});
}

TEST_CASE("the methods give the same numbers by name") {
    const auto call = [](const std::string& name, const std::map<std::string, std::string>& given) {
        for (const auto& method : equipment::methods())
            if (method.name == name)
                return method.run(*check_arguments(method.inputs, given))->outputs;
        return std::vector<MethodOutput>{};
    };
    const auto load =
        call("makeable_load", {{"bar_kg", "20"}, {"pairs_kg", "20,20,10,5,2.5,1.25"}, {"target_kg", "101"}});
    REQUIRE(load.size() == 4);
    CHECK(load[0].value == doctest::Approx(100));
    CHECK(load[2].value == doctest::Approx(102.5));
    CHECK(load[3].value == 48);
    const auto moves = call("stack_moves", {{"from_kg", "20"}, {"to_kg", "25,15"}});
    REQUIRE(moves.size() == 1);
    CHECK(moves[0].value == 3);
}
