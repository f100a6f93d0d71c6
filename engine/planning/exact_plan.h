// What a linear and a mixed-integer solver (Clp and CBC) add to the search: how much could still be gained at most, a
// polish of the plan found, a proof on small problems, and why no plan exists.
//
//   bound_plan    the linear relaxation: no plan can have more points
//   polish_plan   fix-and-optimise: the lines of all but two sessions held, those two and all sets solved by branch and
//                 bound within a count of nodes, for more points than the plan held; where that gains nothing, the next
//                 two sessions of a meso, and after all of these every three
//   solve_plan    the whole problem by branch and bound within a count of nodes
//   find_plan     the first plan branch and bound comes by, good or not: a start for the search where it finds none itself
//   explain_conflict   a smallest set of the coach's limits that cannot hold together, found by leaving out one group
//                 after another [ChinneckDravnieks1991], the last of LimitGroup first, so that of several conflicts the
//                 one easiest to give up is told; and for each of them how far relaxing it alone would have to go. By the
//                 linear relaxation; where that sees no conflict, by branch and bound, and where that runs out of nodes,
//                 `proven` is false.
// Work is counted in nodes and rounds, never in seconds: the same input gives the same answer.
#pragma once

#include "planning/linear_model.h"

#include <functional>

namespace amentum {

struct PlanBound {
    double points; // no plan has more
};
std::optional<PlanBound> bound_plan(const BlockProblem&); // none: the relaxation has no solution either

struct PolishBudget {
    int rounds = 20;
    int nodes = 300; // of a round
    std::uint64_t seed = 1;
};
PlanSets polish_plan(const BlockProblem&, const PlanSets& from, const PolishBudget& = {},
                     const std::function<bool(double share)>& going = {});

struct SolvedPlan {
    PlanSets plan;
    bool proven; // the best there is
};
std::optional<SolvedPlan> solve_plan(const BlockProblem&,
                                     int nodes); // none: no plan within the nodes, or none at all

std::optional<PlanSets> find_plan(const BlockProblem&, int nodes); // none: as for solve_plan

struct Relaxing {
    LimitGroup group;
    std::optional<double>
        by;            // how far its numbers must move, added up, in its unit; none: alone it is not enough
    std::string words; // "4 minutes more in each session would do: 39 instead of 35"
};
struct Conflict {
    std::vector<LimitGroup> groups;
    std::vector<Relaxing> relaxing; // one for each group
    bool proven;
};
std::optional<Conflict> explain_conflict(const BlockProblem&); // none: there is a plan, as far as can be seen

} // namespace amentum
