#include "planning/exact_plan.h"
#include "planning/inside/branch_and_bound.h"
#include "planning/inside/held_lines.h"

namespace amentum {

std::optional<SolvedPlan> solve_plan(const BlockProblem& problem, int nodes) {
    const LinearModel model = linear_model(problem);
    const LinearAnswer answer = solve_whole(model, {nodes});
    if (!answer.solved())
        return {};
    PlanSets plan = plan_of(model, answer.values);
    if (!breaches(problem, plan).empty())
        return {};
    return SolvedPlan{std::move(plan), answer.outcome == Outcome::best};
}

std::optional<PlanSets> find_plan(const BlockProblem& problem, int nodes) {
    LinearModel model = linear_model(problem);
    for (auto& column : model.columns) // any plan will do: without points the rows alone steer
        column.points = 0;
    const LinearAnswer answer = solve_whole(model, {nodes, {}, 1});
    if (!answer.solved())
        return {};
    PlanSets plan = plan_of(model, answer.values);
    return breaches(problem, plan).empty() ? std::optional(std::move(plan)) : std::nullopt;
}

} // namespace amentum
