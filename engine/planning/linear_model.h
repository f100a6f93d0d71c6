// The same problem (block_problem.h) as a mixed-integer linear model, for a solver of such models: its bound, its polish
// and its explanation of a conflict. Worth is concave and costs are convex, so both are linear in extra columns.
//
// Columns, for each meso m, session d, choice c that may stand there, barred ones included (a row of own_lines bars them):
//   used_mdc in {0, 1},  sets_mdc integer,  fewest used <= sets <= most used
// and continuous ones for the dose between two knots of the curve, sets above the usual number of a region, sets a ready
// group is short of, a change from the plan before. Maximise total().
// Rows carry the group of limits they belong to, in the coach's words; rows of the model itself carry none.
// Units: those of block_problem.h.
#pragma once

#include "planning/price_plan.h"

#include <optional>
#include <string>
#include <vector>

namespace amentum {

struct LinearColumn {
    std::string name;
    double lower;
    double upper;  // infinity where there is none
    double points; // in the objective, to be maximised
    bool whole;
};

struct LinearEntry {
    int column;
    double factor;
};

struct LinearRow {
    std::string name;
    double lower; // -infinity where there is none
    double upper;
    std::vector<LinearEntry> entries;
    std::optional<LimitGroup> group; // none: the model's own, or safety: never to be dropped
    // Which number of the group it is about: rows of one number give way together, and `give` for each unit of it. None:
    // a number of its own.
    std::optional<int> number = {};
    double give = 1;
};

struct LinearModel {
    std::vector<LinearColumn> columns;
    std::vector<LinearRow> rows;
    double constant = 0; // points
    // [meso][session][choice] -> column, or -1 where the choice never stands
    std::vector<std::vector<std::vector<int>>> used;
    std::vector<std::vector<std::vector<int>>> sets;
};

LinearModel linear_model(const BlockProblem&);
std::string linear_model_text(const LinearModel&); // the LP file format many solvers read

} // namespace amentum
