// The search beside the plain account: its running sums, its word on limits, its sameness, and what it may not do.
#include "planning/inside/running_plan.h"
#include "planning/inside/seeded_stream.h"
#include "planning/price_block.h"
#include "planning/search_plan.h"
#include "planning/state_problem.h"
#include "planning/tests/invented_gym.h"
#include "planning/tests/random_problem.h"

#include <doctest/doctest.h>

using namespace amentum;
using invented::random_problem;
using invented::RandomProblem;
using invented::Room;

namespace {

BlockProblem problem_of(std::uint64_t seed, int mesos = 2) {
    RandomProblem of;
    of.choices = 40;
    of.sessions = 3;
    of.mesos = mesos;
    of.room = seed % 2 == 0 ? Room::loose : Room::tight;
    of.seed = seed;
    of.starts = true;
    of.bars = 2;
    of.least_doses = static_cast<int>(seed % 3);
    of.previous = seed % 4 == 0;
    return random_problem(of);
}

} // namespace

TEST_CASE("the dose curve: published ends, straight between, its spread") {
    const auto& curve = usual_dose_curve();
    CHECK(curve.share(0) == 0);
    CHECK(curve.share(5) == doctest::Approx(0.82)); // 0.82 against 1.01 at ten and more, Ralston 2017
    CHECK(curve.share(10) == doctest::Approx(1.00));
    CHECK(curve.share(2) == doctest::Approx(0.55)); // halfway between 0.40 and 0.70
    CHECK(curve.share(40) == doctest::Approx(1.00));
    CHECK(curve.share_between(5).low == doctest::Approx(0.70));  // 0.82 - 0.18 x (0.30 - 0.18) / 0.18
    CHECK(curve.share_between(5).high == doctest::Approx(0.94)); // 0.82 + 0.18 x (0.18 - 0.06) / 0.18
    double before = 0, slope_before = 1e9;
    for (double sets = 0.25; sets <= 14; sets += 0.25) {
        const double slope = curve.share(sets) - before;
        CHECK(slope >= 0);
        CHECK(slope <= slope_before + 1e-12); // concave
        before = curve.share(sets);
        slope_before = slope;
    }
}

TEST_CASE("one exercise for one quality, by hand: five sets are worth 82 points less fatigue and a line") {
    RandomProblem of;
    of.choices = 1;
    of.sessions = 1;
    of.qualities = 1;
    BlockProblem problem = random_problem(of);
    Choice& choice = problem.choices[0];
    choice.serves = {1};
    choice.hard = true;
    choice.ready = std::nullopt;
    choice.sessions = {true};
    choice.region = Region::legs;
    for (auto& region : problem.limits.regions)
        region = {10, 20};
    PlanSets plan = empty_plan(problem);
    for (auto& meso : plan)
        meso[0][0] = 5;
    const auto price = price_plan(problem, plan);
    CHECK(price.worth == doctest::Approx(82));
    CHECK(price.total() == doctest::Approx(82 - 5 * 0.02 - 0.05));
    for (auto& meso : plan)
        meso[0][0] = 12; // two beyond the usual ten: 0.25 each
    CHECK(price_plan(problem, plan).total() == doctest::Approx(100 - 12 * 0.02 - 2 * 0.25 - 0.05));
}

TEST_CASE("running sums are the plain price and the plain breaches after any changes") {
    for (std::uint64_t seed = 1; seed <= 40; ++seed) {
        CAPTURE(seed);
        const BlockProblem problem = problem_of(seed);
        RunningPlan running(problem, empty_plan(problem));
        SeededStream stream(seed);
        for (int change = 0; change < 400; ++change) {
            const int m = stream.below(static_cast<int>(problem.mesos.size()));
            const int d = stream.below(problem.sessions);
            const auto& may = running.candidates(m, d);
            if (may.empty())
                continue;
            const int c = may[static_cast<std::size_t>(stream.below(static_cast<int>(may.size())))];
            const Choice& choice = problem.choices[static_cast<std::size_t>(c)];
            const int sets = stream.below(3) > 0 ? 0 : choice.fewest_sets;
            running.set(m, d, c, sets);
            if (change % 20 != 0)
                continue;
            CHECK(running.points() ==
                  doctest::Approx(price_plan(problem, running.sets()).total()).epsilon(1e-9));
            CHECK((running.broken() > 0) == !breaches(problem, running.sets()).empty());
        }
    }
}

TEST_CASE("what the search finds keeps every limit, is the same again, and is never below where it began") {
    int found = 0;
    for (std::uint64_t seed = 1; seed <= 24; ++seed) {
        CAPTURE(seed);
        const BlockProblem problem = problem_of(seed);
        const SearchBudget budget{4'000, 2, seed};
        const auto plan = search_plan(problem, budget);
        if (!plan)
            continue;
        ++found;
        CHECK(breaches(problem, *plan).empty());
        CHECK(*plan == *search_plan(problem, budget));
        const SearchBudget other{1'000, 1, seed + 99};
        const auto from_there = search_plan(problem, other, &*plan);
        REQUIRE(from_there);
        CHECK(price_plan(problem, *from_there).total() >= price_plan(problem, *plan).total() - 1e-9);
    }
    CHECK(found >= 18);
}

TEST_CASE("a search that is told to stop keeps the best so far") {
    const BlockProblem problem = problem_of(2, 1);
    int asked = 0;
    const auto plan = search_plan(problem, {40'000, 3, 1}, nullptr, [&](double share) {
        CHECK(share >= 0);
        CHECK(share <= 1);
        return ++asked < 150;
    });
    CHECK(asked == 150);
    REQUIRE(plan);
    CHECK(breaches(problem, *plan).empty());
}

TEST_CASE("a block just planned is weighed by its written lines as its plan was") {
    const invented::World world;
    for (const int weeks : {4, 7, 9}) {
        const BlockRequest request = world.request(weeks, 3, 60);
        const auto block = plan_block(request);
        REQUIRE(block);
        const auto priced = price_block(request, *block);
        REQUIRE(priced);
        const KitLoads loads(request.kit);
        const QualityWorth worth(request);
        const auto allowed = allowed_exercises(request, loads, worth);
        const auto stated = state_problem(request, allowed, worth);
        REQUIRE(stated);
        const auto plain = price_plan(stated->problem, plan_of(*stated, *block));
        CHECK(priced->price.total() == doctest::Approx(plain.total()).epsilon(1e-9));
        CHECK(priced->breaches.empty());
        REQUIRE(priced->bound);
        CHECK(*priced->bound >= plain.total() - 1e-6);
        for (std::size_t i = 0; i < block->lines.size(); ++i)
            if (block->lines[i].week % 4 != 0)
                CHECK_FALSE(priced->lines[i].held_back.empty());
    }
}
