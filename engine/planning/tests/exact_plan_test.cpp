// Branch and bound against every plan there is; and what a polish may do to a plan.
#include "planning/exact_plan.h"
#include "planning/inside/anneal_plan.h"
#include "planning/search_plan.h"
#include "planning/tests/every_plan.h"
#include "planning/tests/random_plan.h"

#include <doctest/doctest.h>

#include <algorithm>

using namespace amentum;
using namespace amentum::invented;

namespace {

// Two sessions and three or four choices, with limits near enough to be felt.
BlockProblem small_problem(int choices, int mesos, std::uint64_t seed) {
    RandomProblem of{choices, 2, mesos, Room::tight, seed, 2};
    of.starts = seed % 2 == 0;
    of.pins = seed % 3 == 0;
    of.bars = seed % 4 == 0;
    of.least_doses = seed % 5 == 0;
    of.previous = seed % 6 == 0;
    BlockProblem problem = random_problem(of);
    Dice dice(seed + 1000);
    problem.limits.minutes = 14 + dice.whole(0, 8);
    problem.limits.regions.assign(regions_counted, {3, 5});
    problem.limits.most_days = dice.whole(1, 2);
    problem.limits.most_heavy_mains = dice.whole(1, 2);
    problem.choices[2].main_lift = true; // beside the second, so that most weeks can have a plan
    problem.choices[2].heavy_legs = false;
    for (auto& choice : problem.choices) {
        choice.most_sets = std::min(choice.most_sets, choice.fewest_sets + (mesos > 1 ? 1 : 2));
        choice.sessions.assign(2, true);
        if (mesos > 1 && !choice.main_lift)
            choice.sessions[static_cast<std::size_t>(dice.whole(0, 1))] = false;
    }
    for (auto& least : problem.least)
        least.weekly_sets = 1;
    return problem;
}

void check_against_every_plan(const BlockProblem& problem, int& solvable) {
    const auto best = best_of_every_plan(problem);
    const auto solved = solve_plan(problem, 100'000);
    REQUIRE(solved.has_value() == best.has_value());
    if (!best)
        return;
    ++solvable;
    CHECK(solved->proven);
    CHECK(breaches(problem, solved->plan).empty());
    CHECK(price_plan(problem, solved->plan).total() == doctest::Approx(best->points).epsilon(1e-7));
    const auto bound = bound_plan(problem);
    REQUIRE(bound);
    CHECK(bound->points >= best->points - 1e-6);
    const auto found = search_plan(problem, {20'000, 3, 1});
    REQUIRE(found);
    CHECK(breaches(problem, *found).empty());
    CHECK(price_plan(problem, *found).total() == doctest::Approx(best->points).epsilon(1e-7));
}

} // namespace

TEST_CASE(
    "the best plan of a small meso, proven or found by the search, is the best of every plan there is") {
    int solvable = 0;
    for (std::uint64_t seed = 1; seed <= 50; ++seed) {
        CAPTURE(seed);
        check_against_every_plan(small_problem(seed % 2 ? 3 : 4, 1, seed), solvable);
    }
    CHECK(solvable > 30);
}

TEST_CASE("so is that of two mesos, one of which binds the other by its ramp") {
    int solvable = 0;
    for (std::uint64_t seed = 1; seed <= 12; ++seed) {
        CAPTURE(seed);
        check_against_every_plan(small_problem(3, 2, seed), solvable);
    }
    CHECK(solvable > 8);
}

TEST_CASE(
    "a change of the annealing taken back leaves the plan as it was, also where it changed a line twice") {
    const BlockProblem problem = small_problem(3, 2, 7);
    Annealing annealing(problem, empty_plan(problem), 1);
    int changed = 0;
    for (int i = 0; i < 20'000; ++i) {
        const double points = annealing.points(), broken = annealing.broken();
        if (!annealing.change())
            continue;
        changed += annealing.points() != points;
        if (i % 3 == 0)
            continue; // stays
        annealing.take_back();
        REQUIRE(annealing.points() == doctest::Approx(points).epsilon(1e-9));
        REQUIRE(annealing.broken() == doctest::Approx(broken).epsilon(1e-9));
    }
    CHECK(changed > 5'000);
}

TEST_CASE("a polish never loses, breaks no limit, and does the same twice") {
    int gained = 0, polished = 0;
    for (std::uint64_t seed = 1; seed <= 12; ++seed) {
        RandomProblem of{24, 2, 1 + static_cast<int>(seed % 2), Room::tight, seed, 5};
        const BlockProblem problem = random_problem(of);
        Dice dice(seed);
        const PlanSets from = random_plan(problem, dice, 100);
        if (!breaches(problem, from).empty())
            continue;
        ++polished;
        const PolishBudget budget{3, 15, seed};
        const PlanSets better = polish_plan(problem, from, budget);
        CAPTURE(seed);
        CHECK(breaches(problem, better).empty());
        CHECK(price_plan(problem, better).total() >= price_plan(problem, from).total());
        CHECK(polish_plan(problem, from, budget) == better);
        gained += price_plan(problem, better).total() > price_plan(problem, from).total() + 1;
    }
    CHECK(polished > 4);
    CHECK(gained > 2);
}

TEST_CASE("a polish stops when it is told to, and leaves the best plan as it is") {
    const BlockProblem problem = small_problem(3, 1, 7);
    const auto best = solve_plan(problem, 100'000);
    REQUIRE(best);
    CHECK(polish_plan(problem, best->plan) == best->plan);
    const PlanSets nothing = empty_plan(problem);
    CHECK(polish_plan(problem, nothing, {}, [](double) { return false; }) == nothing);
}
