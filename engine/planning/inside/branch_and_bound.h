// A linear model handed to the solvers Clp and CBC (docs/decisions/cbc.md): the one place that knows them.
//
//   solve_relaxed   columns may be broken: the simplex method
//   solve_whole     whole columns are whole: cuts, then branch and bound within a count of nodes
// The work is counted in nodes, never in seconds; one thread; nothing is printed. Tolerance of a row 1e-7, of points 1e-6.
#pragma once

#include "planning/linear_model.h"

namespace amentum {

enum class Outcome {
    best,   // the best there is
    found,  // a solution, but the nodes ran out
    none,   // there is none (above `above`)
    unknown // none was found within the nodes
};

struct LinearAnswer {
    Outcome outcome;
    double points;              // of `values`
    double bound;               // no solution has more
    std::vector<double> values; // by column; empty without a solution
    bool solved() const { return !values.empty(); }
};

struct BranchBudget {
    int nodes;
    std::optional<double> above = {};  // look only for solutions of more points than this
    std::optional<int> solutions = {}; // stop after so many
};

LinearAnswer solve_relaxed(const LinearModel&);
LinearAnswer solve_whole(const LinearModel&, const BranchBudget&);

} // namespace amentum
