#include "planning/exact_plan.h"
#include "planning/inside/branch_and_bound.h"
#include "planning/inside/describe_relaxing.h"
#include "planning/inside/loosened_model.h"

namespace amentum {
namespace {

constexpr int nodes_of_a_question = 200, nodes_of_an_amount = 60;
constexpr double nothing = 1e-6;

// Is there a plan when some groups are given up? The relaxation first; where that sees no conflict, whole sets and lines
// may still be one.
class Question {
public:
    Question(const LinearModel& model, bool relaxed_is_enough)
        : model_(model), relaxed_is_enough_(relaxed_is_enough) {}

    bool conflict_without(const Groups& given_up) {
        const LinearModel asked = loosened(model_, given_up);
        if (solve_relaxed(asked).outcome == Outcome::none)
            return true;
        if (relaxed_is_enough_)
            return false;
        const LinearAnswer whole = solve_whole(asked, {nodes_of_a_question});
        proven_ = proven_ && whole.outcome != Outcome::unknown;
        return !whole.solved();
    }
    bool proven() const { return proven_; }

private:
    const LinearModel& model_;
    bool relaxed_is_enough_;
    bool proven_ = true;
};

// [ChinneckDravnieks1991]: a group without which there is still a conflict is left out for good. From the last to the
// first, so that of several conflicts the one is told whose limits are given up most easily.
std::vector<LimitGroup> smallest_conflict(Question& question) {
    Groups given_up;
    std::vector<LimitGroup> kept;
    for (int g = limit_groups - 1; g >= 0; --g) {
        Groups without = given_up;
        without.set(static_cast<std::size_t>(g));
        if (question.conflict_without(without))
            given_up = without;
        else
            kept.insert(kept.begin(), static_cast<LimitGroup>(g));
    }
    return kept;
}

// The least the limits of one group must move, all others kept, for whole sets and lines; where the nodes do not find
// such a plan, none.
Relaxing solve_relaxing(const BlockProblem& problem, const LinearModel& model, LimitGroup group) {
    const YieldingModel yields = yielding(model, group);
    LinearAnswer answer = solve_relaxed(yields.model);
    if (answer.solved())
        answer = solve_whole(yields.model, {nodes_of_an_amount});
    if (!answer.solved())
        return {group, {}, describe_not_enough(group)};
    std::map<int, double> moved;
    double by = 0;
    for (const auto& [number, column] : yields.columns)
        if (const double each = answer.values[static_cast<std::size_t>(column)]; each > nothing)
            by += moved[number] = each;
    return {group, by, describe_relaxing(problem, group, moved)};
}

} // namespace

std::optional<Conflict> explain_conflict(const BlockProblem& problem) {
    const LinearModel model = linear_model(problem);
    const bool seen = solve_relaxed(loosened(model, {})).outcome == Outcome::none;
    Question question(model, seen);
    if (!seen && !question.conflict_without({}))
        return {};
    Conflict conflict{smallest_conflict(question), {}, false};
    conflict.proven = question.proven();
    for (const LimitGroup group : conflict.groups)
        conflict.relaxing.push_back(solve_relaxing(problem, model, group));
    return conflict;
}

} // namespace amentum
