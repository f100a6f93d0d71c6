// Why no plan exists: three cases by hand, and random ones whose explanation is taken apart limit by limit.
#include "planning/exact_plan.h"
#include "planning/tests/random_problem.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

using namespace amentum;
using namespace amentum::invented;

namespace {

Choice choice(std::string name, Part part, double set_minutes, double setup_minutes, int fewest, int most,
              std::vector<double> serves) {
    Choice c{};
    c.exercise = c.name = c.pattern = std::move(name);
    c.part = part;
    c.region = part == Part::main_lift ? Region::upper_push : Region::upper_pull;
    c.set_minutes = set_minutes;
    c.setup_minutes = setup_minutes;
    c.fewest_sets = fewest;
    c.most_sets = most;
    c.serves = std::move(serves);
    c.hard = true;
    c.main_lift = part == Part::main_lift;
    c.sessions.assign(3, true);
    return c;
}

// Three sessions of 20 minutes; a main lift takes 12 of them at least; 15 weekly sets of pulling are asked for, of which a
// session takes 5 in 11 minutes.
BlockProblem short_sessions() {
    BlockProblem problem{};
    problem.qualities = {"pulling_strength"};
    problem.weights = {1};
    problem.choices = {choice("press", Part::main_lift, 3, 9, 1, 5, {0}),
                       choice("row", Part::assistance, 2, 1, 1, 8, {1})};
    problem.sessions = 3;
    const std::vector<bool> all(3, true), none(3, false);
    problem.mesos = {{1, 4, {{1, all, none, none, false}, {2, all, none, none, false}}}};
    problem.limits.minutes = 20;
    problem.limits.most_days = 3;
    problem.limits.regions.assign(regions_counted, {30, 40});
    problem.limits.most_arm_sets = problem.limits.most_leg_sets_before_start = 20;
    problem.curve = usual_dose_curve();
    problem.least = {{0, 15}};
    return problem;
}

const Relaxing& of(const Conflict& conflict, LimitGroup group) {
    return *std::find_if(conflict.relaxing.begin(), conflict.relaxing.end(),
                         [&](const Relaxing& each) { return each.group == group; });
}

// The problem without one group of limits, made without the rows of the linear model.
BlockProblem without(BlockProblem problem, LimitGroup group) {
    auto& limits = problem.limits;
    constexpr int many = 1000;
    switch (group) {
    case LimitGroup::minutes:
        limits.minutes = many;
        break;
    case LimitGroup::region_sets:
        for (auto& region : limits.regions)
            region.most = many;
        break;
    case LimitGroup::arm_sets:
        limits.most_arm_sets = many;
        break;
    case LimitGroup::ramp:
        limits.ramp = many;
        break;
    case LimitGroup::main_lift:
        limits.main_lift_wanted = false;
        limits.most_main_lifts = many;
        break;
    case LimitGroup::lines:
        limits.most_lines = many;
        break;
    case LimitGroup::once:
        limits.most_days = many;
        for (auto& each : problem.choices)
            each.pattern = each.exercise;
        break;
    case LimitGroup::day_structure:
        limits.most_heavy_legs = limits.most_heavy_mains = many;
        limits.neighbours.clear();
        break;
    case LimitGroup::own_lines:
        problem.pinned.clear();
        problem.barred.clear();
        break;
    case LimitGroup::least_dose:
        problem.least.clear();
        break;
    case LimitGroup::sets_of_line:
        for (auto& each : problem.choices) {
            each.fewest_sets = 1;
            each.most_sets = 20;
        }
        break;
    }
    return problem;
}

BlockProblem with_only(BlockProblem problem, const std::vector<LimitGroup>& kept) {
    for (int g = 0; g < limit_groups; ++g)
        if (std::find(kept.begin(), kept.end(), static_cast<LimitGroup>(g)) == kept.end())
            problem = without(std::move(problem), static_cast<LimitGroup>(g));
    return problem;
}

bool has_plan(const BlockProblem& problem) {
    return bound_plan(problem) && solve_plan(problem, 400);
}

} // namespace

TEST_CASE("short sessions, a main lift in each and many sets of pulling cannot all be had") {
    const BlockProblem problem = short_sessions();
    const auto conflict = explain_conflict(problem);
    REQUIRE(conflict);
    CHECK(conflict->proven);
    CHECK(conflict->groups ==
          std::vector{LimitGroup::minutes, LimitGroup::main_lift, LimitGroup::least_dose});
    // By hand: 12 + 1 + 5 x 2 minutes are 23. Without a main lift a session takes 8 rows, with one 3: 8 + 8 + 3 are
    // enough, 8 + 3 + 3 are not. With all three main lifts 3 x 3 rows are left of 15.
    CHECK(of(*conflict, LimitGroup::minutes).by.value() == doctest::Approx(3));
    CHECK(of(*conflict, LimitGroup::main_lift).by.value() == doctest::Approx(2));
    CHECK(of(*conflict, LimitGroup::least_dose).by.value() == doctest::Approx(6));
    CHECK(of(*conflict, LimitGroup::minutes).words ==
          "3 minutes more in each session would do: 23 instead of 20");
    CHECK(of(*conflict, LimitGroup::main_lift).words ==
          "2 sessions without a main lift, or with one more, would do");
    CHECK(of(*conflict, LimitGroup::least_dose).words ==
          "Asking for fewer weekly sets would do: pulling strength 9 instead of 15");

    BlockProblem wider = problem;
    wider.limits.minutes = 23;
    CHECK(has_plan(wider));
    CHECK_FALSE(explain_conflict(wider));
    wider.limits.minutes = 22.9;
    CHECK_FALSE(has_plan(wider));
}

TEST_CASE("a conflict that only whole sets have") {
    BlockProblem problem = short_sessions();
    problem.limits.minutes = 60;
    problem.least = {{0, 2.5}};
    problem.limits.regions[static_cast<std::size_t>(Region::upper_pull)].most = 2.9;
    REQUIRE(bound_plan(problem)); // two and a half sets would do
    const auto conflict = explain_conflict(problem);
    REQUIRE(conflict);
    CHECK(conflict->proven);
    CHECK(conflict->groups == std::vector{LimitGroup::region_sets, LimitGroup::least_dose});
    CHECK(of(*conflict, LimitGroup::region_sets).by.value() == doctest::Approx(0.1));
    CHECK(of(*conflict, LimitGroup::region_sets).words ==
          "More weekly hard sets would do: upper pull 3 instead of 2.9");
    CHECK(of(*conflict, LimitGroup::least_dose).by.value() == doctest::Approx(0.5));
}

TEST_CASE("the coach's own lines against each other, and a day near a start that is never offered") {
    BlockProblem problem = short_sessions();
    problem.least.clear();
    problem.choices.push_back(choice("squat", Part::main_lift, 3, 3, 3, 5, {0}));
    problem.choices.back().heavy_legs = true;
    problem.pinned = {{2, 0, 4}};
    problem.barred = {{2, {}}};
    const auto own = explain_conflict(problem);
    REQUIRE(own);
    CHECK(own->groups == std::vector{LimitGroup::own_lines});
    CHECK(own->relaxing.front().by.value() == doctest::Approx(1));
    const std::string words = own->relaxing.front().words;
    const bool either =
        words == "It would do to change what you hold or leave out: allowing squat again" ||
        words == "It would do to change what you hold or leave out: no longer holding squat in session 1";
    CHECK_MESSAGE(either, words);

    problem.barred.clear();
    for (auto& week : problem.mesos[0].full_weeks)
        week.start_week = true;
    problem.limits.most_leg_sets_before_start = 2; // the pin's four sets would be too many
    const auto safety = explain_conflict(problem);
    REQUIRE(safety);
    CHECK(safety->groups == std::vector{LimitGroup::own_lines});
}

TEST_CASE("every explanation is a conflict, none of its limits is idle, and moving one as said is enough") {
    int explained = 0, moved = 0;
    for (std::uint64_t seed = 1; seed <= 60; ++seed) {
        RandomProblem random{20, 3, 1 + static_cast<int>(seed % 2), Room::tight, seed, 4};
        random.pins = static_cast<int>(seed % 3);
        random.least_doses = 1 + static_cast<int>(seed % 2);
        random.starts = seed % 2 == 0;
        BlockProblem problem = random_problem(random);
        for (auto& least : problem.least)
            least.weekly_sets *= 5;
        const auto conflict = explain_conflict(problem);
        CAPTURE(seed);
        if (!conflict) {
            CHECK(bound_plan(problem));
            continue;
        }
        ++explained;
        REQUIRE_FALSE(conflict->groups.empty());
        CHECK_FALSE(has_plan(with_only(problem, conflict->groups)));
        for (const LimitGroup group : conflict->groups) {
            CAPTURE(limit_words(group));
            auto fewer = conflict->groups;
            fewer.erase(std::find(fewer.begin(), fewer.end(), group));
            CHECK(bound_plan(with_only(problem, fewer)));
            BlockProblem wider = problem;
            const auto by = of(*conflict, group).by;
            if (!by)
                continue;
            if (group == LimitGroup::minutes)
                wider.limits.minutes += *by;
            else if (group == LimitGroup::arm_sets)
                wider.limits.most_arm_sets += *by;
            else if (group == LimitGroup::lines)
                wider.limits.most_lines += static_cast<int>(std::lround(*by));
            else if (group == LimitGroup::least_dose && problem.least.size() == 1)
                wider.least.front().weekly_sets -= *by;
            else
                continue;
            ++moved;
            CHECK(has_plan(wider));
        }
    }
    CHECK(explained > 15);
    CHECK(moved > 8);
}
