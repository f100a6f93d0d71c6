#include "planning/plan_block.h"

#include "planning/block_notes.h"
#include "planning/check_request.h"
#include "planning/exact_plan.h"
#include "planning/refuse_plan.h"
#include "planning/search_plan.h"
#include "planning/write_lines.h"

#include <algorithm>

namespace amentum {
namespace {

constexpr int brief_starts = 3, thorough_starts = 6; // of the first round
constexpr double thorough_moves = 2.5;               // times the brief ones
constexpr int nodes_when_nothing_was_found = 400;

// The share of the work each step takes, for whoever watches.
constexpr double searched = 0.4;

// Whoever watches, told of a part of the work; it remembers whether they asked to stop.
class Watch {
public:
    explicit Watch(const BlockRequest& request) : request_(request) {}

    std::function<bool(double)> part(double from, double to) {
        if (!request_.going)
            return {};
        return [this, from, to](double share) {
            stopped_ = stopped_ || !request_.going(from + share * (to - from));
            return !stopped_;
        };
    }
    bool stopped() const { return stopped_; }

private:
    const BlockRequest& request_;
    bool stopped_ = false;
};

// The search's plan, polished when there is time; where it finds none and no limits are in conflict, it starts once more from
// the first plan branch and bound comes by.
Result<PlanSets> best_plan(const BlockRequest& request, const BlockProblem& problem) {
    const bool brief = request.effort == Effort::brief;
    const SearchBudget budget{brief ? request.moves
                                    : static_cast<std::int64_t>(thorough_moves * double(request.moves)),
                              brief ? brief_starts : thorough_starts, request.seed};
    const PlanSets* from = problem.previous ? &*problem.previous : nullptr;
    Watch watch(request);
    auto plan = search_plan(problem, budget, from, watch.part(0, brief ? 1 : searched));
    if (!plan && watch.stopped())
        return refuse_stopped();
    if (!plan) {
        if (const auto conflict = refuse_conflict(problem))
            return *conflict;
        if (const auto found = find_plan(problem, nodes_when_nothing_was_found))
            plan = search_plan(problem, budget, &*found);
    }
    if (!plan)
        return refuse_not_found();
    return brief ? *plan : polish_plan(problem, *plan, PolishBudget{}, watch.part(searched, 1));
}

bool no_day(const StatedProblem& stated) {
    return std::all_of(stated.placed.begin(), stated.placed.end(),
                       [](const auto& week) { return week.sessions.empty(); });
}

} // namespace

TrainingStatus training_status(const Athlete& athlete) {
    const double years = athlete.training_years.value_or(0);
    return years < 1   ? TrainingStatus::novice
           : years < 4 ? TrainingStatus::intermediate
                       : TrainingStatus::advanced;
}

Result<Block> plan_block(const BlockRequest& request) {
    if (const auto refusal = check_request(request))
        return *refusal;
    const KitLoads loads(request.kit);
    const QualityWorth worth(request);
    const AllowedExercises allowed = allowed_exercises(request, loads, worth);
    if (std::none_of(allowed.list.begin(), allowed.list.end(), [](const auto& e) { return e.worth > 0; }))
        return refuse_no_exercise(request, allowed);
    const auto stated = state_problem(request, allowed, worth);
    if (!stated)
        return stated.refusal();
    if (no_day(*stated))
        return refuse_no_day(request);
    const auto plan = best_plan(request, stated->problem);
    if (!plan)
        return plan.refusal();

    WrittenLines written = write_lines(request, allowed, worth, loads, *stated, *plan);
    Block block{BlockId{request.athlete.id.text + "-" + request.start.text()},
                request.athlete.id,
                request.kit.id,
                request.start,
                request.weeks,
                stated->sessions,
                request.minutes,
                std::move(written.lines),
                {},
                request.model};
    block.notes = describe_notes({request, allowed, worth, *stated, *plan, block.lines, written.spared});
    return block;
}

} // namespace amentum
