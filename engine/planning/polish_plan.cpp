#include "planning/exact_plan.h"
#include "planning/inside/branch_and_bound.h"
#include "planning/inside/held_lines.h"
#include "planning/inside/seeded_stream.h"

#include <algorithm>
#include <utility>
#include <vector>

namespace amentum {
namespace {

constexpr double gain_wanted = 1e-6; // points

using Freed = std::vector<SessionPlace>;

// Every two, or every three, sessions of one meso: they share its weekly limits.
std::vector<Freed> freed_together(const BlockProblem& problem, int many) {
    std::vector<Freed> all;
    for (std::size_t m = 0; m < problem.mesos.size(); ++m)
        for (unsigned which = 1; which < 1u << problem.sessions; ++which) {
            Freed freed;
            for (std::size_t d = 0; d < static_cast<std::size_t>(problem.sessions); ++d)
                if (which >> d & 1u)
                    freed.push_back({m, d});
            if (static_cast<int>(freed.size()) == std::min(many, problem.sessions))
                all.push_back(std::move(freed));
        }
    return all;
}

void shuffle(std::vector<Freed>& all, SeededStream& stream) { // Fisher and Yates
    for (std::size_t left = all.size(); left > 1; --left)
        std::swap(all[left - 1], all[static_cast<std::size_t>(stream.below(static_cast<int>(left)))]);
}

// The plan with the lines of some sessions and all sets chosen anew; none where that gains nothing.
std::optional<PlanSets> better_plan(const BlockProblem& problem, LinearModel model, const PlanSets& held,
                                    const Freed& freed, const BranchBudget& budget) {
    for (std::size_t m = 0; m < held.size(); ++m)
        for (std::size_t d = 0; d < held[m].size(); ++d)
            if (const SessionPlace place{m, d}; std::find(freed.begin(), freed.end(), place) == freed.end())
                hold_lines(held, place, model);
    const LinearAnswer answer = solve_whole(model, budget);
    if (!answer.solved())
        return {};
    PlanSets plan = plan_of(model, answer.values);
    if (!breaches(problem, plan).empty() ||
        (budget.above && price_plan(problem, plan).total() <= *budget.above))
        return {};
    return plan;
}

} // namespace

PlanSets polish_plan(const BlockProblem& problem, const PlanSets& from, const PolishBudget& budget,
                     const std::function<bool(double share)>& going) {
    const LinearModel model = linear_model(problem);
    SeededStream stream(budget.seed);
    PlanSets held = from;
    bool whole = breaches(problem, from).empty();
    int many = std::min(2, problem.sessions);
    std::vector<Freed> all = freed_together(problem, many);
    std::size_t next = all.size(), idle = 0; // idle: rounds since the last gain
    for (int round = 0; round < budget.rounds; ++round) {
        if (going && !going(double(round) / budget.rounds))
            break;
        if (idle == all.size()) { // no two sessions gain any more
            if (++many > std::min(3, problem.sessions))
                break;
            all = freed_together(problem, many);
            next = all.size();
            idle = 0;
        }
        if (next == all.size()) {
            shuffle(all, stream);
            next = 0;
        }
        BranchBudget search{budget.nodes};
        if (whole)
            search.above = price_plan(problem, held).total() + gain_wanted;
        ++idle;
        if (auto better = better_plan(problem, model, held, all[next++], search)) {
            held = *std::move(better);
            whole = true;
            idle = 0;
        }
    }
    return held;
}

} // namespace amentum
