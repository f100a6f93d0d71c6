// A week before its days beside the plain account of a whole plan: never poorer, never more broken; and what is laid on
// days is that week again.
#include "planning/inside/running_week.h"
#include "planning/inside/search_week.h"
#include "planning/search_plan.h"
#include "planning/tests/random_plan.h"

#include <doctest/doctest.h>

using namespace amentum;
using namespace amentum::invented;

namespace {

BlockProblem problem_of(std::uint64_t seed) {
    RandomProblem of;
    of.choices = 60;
    of.sessions = 3 + static_cast<int>(seed % 2);
    of.room = seed % 2 == 0 ? Room::loose : Room::tight;
    of.seed = seed;
    of.starts = seed % 3 == 0;
    of.bars = 2;
    of.least_doses = static_cast<int>(seed % 2);
    return random_problem(of);
}

std::vector<int> sets_of_week(const BlockProblem& problem, const PlanSets& plan) {
    std::vector<int> sets(problem.choices.size(), 0);
    for (const auto& session : plan.front())
        for (std::size_t c = 0; c < sets.size(); ++c)
            sets[c] += session[c];
    return sets;
}

} // namespace

TEST_CASE("the week of a plan that keeps every limit keeps them too, and has its points or more") {
    int whole = 0, better = 0;
    for (std::uint64_t seed = 1; seed <= 60; ++seed) {
        CAPTURE(seed);
        const BlockProblem problem = problem_of(seed);
        Dice dice(seed);
        const PlanSets plan = random_plan(problem, dice, 150);
        if (!breaches(problem, plan).empty())
            continue;
        ++whole;
        RunningWeek week(problem, 0);
        const auto sets = sets_of_week(problem, plan);
        for (int c = 0; c < static_cast<int>(sets.size()); ++c)
            if (const int wanted = sets[static_cast<std::size_t>(c)]; wanted > 0) {
                CHECK(week.allows(c, wanted));
                week.set(c, wanted);
            }
        CHECK(week.broken() == 0);
        const double points = price_plan(problem, plan).total();
        CHECK(week.points() >= points - 1e-9);
        better += week.points() > points + 0.01; // lines saved, or a more open day
    }
    CHECK(whole > 25);
    CHECK(better > 0);
}

TEST_CASE("where no day is closed, a week laid on days is priced as the week was") {
    for (std::uint64_t seed = 2; seed <= 20; seed += 2) {
        CAPTURE(seed);
        RandomProblem of;
        of.choices = 60;
        of.seed = seed;
        const BlockProblem problem = random_problem(of);
        const PlanSets plan = week_before_days(problem, 4'000, 0.2, seed);
        CHECK(plan == week_before_days(problem, 4'000, 0.2, seed));
        RunningWeek week(problem, 0);
        const auto sets = sets_of_week(problem, plan);
        for (int c = 0; c < static_cast<int>(sets.size()); ++c)
            if (sets[static_cast<std::size_t>(c)] > 0)
                week.set(c, sets[static_cast<std::size_t>(c)]);
        CHECK(week.points() == doctest::Approx(price_plan(problem, plan).total()).epsilon(1e-9));
    }
}

TEST_CASE("a search among few choices brings no other into the week") {
    const BlockProblem problem = problem_of(4);
    std::vector<char> among(problem.choices.size(), 0);
    for (std::size_t c = 0; c < among.size(); c += 2)
        among[c] = 1;
    const auto sets = sets_of_week(problem, week_before_days(problem, 20'000, 0.2, 1, among));
    int held = 0;
    for (std::size_t c = 0; c < sets.size(); ++c) {
        CHECK((sets[c] == 0 || among[c]));
        held += sets[c] > 0;
    }
    CHECK(held > 3);
}
