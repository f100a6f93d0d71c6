// The linear model means what price_plan.h means: with a plan's decisions held, it has a solution exactly when no limit
// is broken, and that solution has the points of the plan.
#include "planning/exact_plan.h"
#include "planning/inside/branch_and_bound.h"
#include "planning/inside/linear_writer.h"
#include "planning/tests/random_plan.h"

#include <doctest/doctest.h>

#include <map>
#include <set>

using namespace amentum;
using namespace amentum::invented;

namespace {

// False where the plan has a line at a place without a column.
bool hold_plan(const BlockProblem& problem, const PlanSets& plan, LinearModel& model) {
    const auto hold = [&](int column, double value) {
        auto& held = model.columns[static_cast<std::size_t>(column)];
        held.lower = held.upper = value;
    };
    for (std::size_t m = 0; m < plan.size(); ++m)
        for (std::size_t d = 0; d < plan[m].size(); ++d)
            for (std::size_t c = 0; c < problem.choices.size(); ++c) {
                const int sets = plan[m][d][c], used = model.used[m][d][c];
                if (used < 0 && sets > 0)
                    return false;
                if (used >= 0) {
                    hold(used, sets > 0);
                    hold(model.sets[m][d][c], sets);
                }
            }
    return true;
}

RandomProblem varied(std::uint64_t seed) {
    RandomProblem of{24, 2 + static_cast<int>(seed % 3), 1 + static_cast<int>(seed % 2), Room::loose, seed};
    of.room = seed % 3 == 0 ? Room::loose : Room::tight;
    of.qualities = 4;
    of.starts = seed % 2 == 0;
    of.pins = static_cast<int>(seed % 4);
    of.bars = static_cast<int>(seed % 5);
    of.least_doses = static_cast<int>(seed % 3);
    of.previous = seed % 4 == 1;
    return of;
}

std::set<std::optional<LimitGroup>> groups_of(const std::vector<Breach>& broken) {
    std::set<std::optional<LimitGroup>> groups;
    for (const auto& breach : broken)
        groups.insert(breach.group);
    return groups;
}

} // namespace

TEST_CASE(
    "a plan's decisions held in the linear model: its points, and a solution just when no limit is broken") {
    int whole = 0, broken_plans = 0;
    std::map<std::optional<LimitGroup>, int> alone; // plans in which only this group was broken
    for (std::uint64_t seed = 1; seed <= 1500; ++seed) {
        Dice dice(seed);
        BlockProblem problem = random_problem(varied(seed));
        if (seed % 7 == 0)
            problem.limits.most_heavy_mains = 2;
        if (seed % 5 == 0)
            problem.limits.most_lines = 3;
        if (seed % 8 == 0)
            problem.limits.most_arm_sets = 2;
        PlanSets plan = random_plan(problem, dice, 60);
        for (int spoils = dice.whole(0, 2); spoils > 0; --spoils)
            spoil_plan(problem, dice, plan);
        LinearModel model = linear_model(problem);
        if (!hold_plan(problem, plan, model))
            continue;
        const auto broken = breaches(problem, plan);
        const auto answer = solve_relaxed(model);
        CAPTURE(seed);
        CAPTURE((broken.empty() ? "no breach" : broken.front().words));
        REQUIRE(answer.solved() == broken.empty());
        if (broken.empty()) {
            ++whole;
            CHECK(answer.points == doctest::Approx(price_plan(problem, plan).total()).epsilon(1e-8));
        } else {
            ++broken_plans;
            if (const auto groups = groups_of(broken); groups.size() == 1)
                ++alone[*groups.begin()];
        }
    }
    CHECK(whole > 200);
    CHECK(broken_plans > 300);
    for (int group = 0; group < limit_groups; ++group) { // a row of each kind was needed at least once
        CAPTURE(group);
        CHECK(alone[static_cast<LimitGroup>(group)] > 0);
    }
    CHECK(alone[std::nullopt] > 0);
}

TEST_CASE("no random plan has more points than the bound") {
    for (std::uint64_t seed = 1; seed <= 40; ++seed) {
        const BlockProblem problem = random_problem(varied(seed));
        const auto bound = bound_plan(problem);
        for (std::uint64_t plan_seed = 0; plan_seed < 5; ++plan_seed) {
            Dice dice(1000 * seed + plan_seed);
            const PlanSets plan = random_plan(problem, dice, 60);
            if (!breaches(problem, plan).empty())
                continue;
            CAPTURE(seed);
            REQUIRE(bound);
            CHECK(price_plan(problem, plan).total() <= bound->points + 1e-6);
        }
    }
}

TEST_CASE("the text of a model in the LP file format") {
    LinearModel model;
    model.columns = {{"sets", 0, 3, 0.5, true}, {"above", 0, unlimited, -1, false}};
    model.rows = {{"usual", -unlimited, 2, {{0, 1}, {1, -1}}, {}},
                  {"pinned", 2, 2, {{0, 1}}, LimitGroup::own_lines}};
    CHECK(linear_model_text(model) == "Maximize\n points: + 0.5 sets - 1 above\n"
                                      "Subject To\n usual: + 1 sets - 1 above <= 2\n pinned: + 1 sets = 2\n"
                                      "Bounds\n 0 <= sets <= 3\n 0 <= above\nGeneral\n sets\nEnd\n");
}
