#include "planning/exact_plan.h"

#include "planning/inside/branch_and_bound.h"

namespace amentum {

std::optional<PlanBound> bound_plan(const BlockProblem& problem) {
    const LinearAnswer relaxed = solve_relaxed(linear_model(problem));
    if (!relaxed.solved())
        return {};
    return PlanBound{relaxed.points};
}

} // namespace amentum
