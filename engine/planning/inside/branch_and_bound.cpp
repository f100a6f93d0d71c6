#include "planning/inside/branch_and_bound.h"

#include <CbcHeuristic.hpp>
#include <CbcModel.hpp>
#include <CglClique.hpp>
#include <CglKnapsackCover.hpp>
#include <CglMixedIntegerRounding2.hpp>
#include <CglPreProcess.hpp>
#include <CglProbing.hpp>
#include <CoinPackedMatrix.hpp>
#include <OsiClpSolverInterface.hpp>

#include <algorithm>

namespace amentum {
namespace {

// Both solvers minimise, so the points change their sign on the way in and out.
void hand_over(const LinearModel& model, OsiClpSolverInterface& solver) {
    std::vector<double> lower, upper, cost, row_lower, row_upper, factors;
    std::vector<int> rows, columns;
    const auto bounded = [&](double x) { return std::clamp(x, -solver.getInfinity(), solver.getInfinity()); };
    for (const auto& column : model.columns) {
        lower.push_back(bounded(column.lower));
        upper.push_back(bounded(column.upper));
        cost.push_back(-column.points);
    }
    for (const auto& row : model.rows) {
        for (const auto& entry : row.entries) {
            rows.push_back(static_cast<int>(row_lower.size()));
            columns.push_back(entry.column);
            factors.push_back(entry.factor);
        }
        row_lower.push_back(bounded(row.lower));
        row_upper.push_back(bounded(row.upper));
    }
    CoinPackedMatrix matrix(true, rows.data(), columns.data(), factors.data(),
                            static_cast<CoinBigIndex>(factors.size()));
    matrix.setDimensions(static_cast<int>(row_lower.size()), static_cast<int>(lower.size()));
    solver.messageHandler()->setLogLevel(0);
    solver.getModelPtr()->setLogLevel(0);
    solver.setHintParam(OsiDoReducePrint, true, OsiHintDo);
    solver.loadProblem(matrix, lower.data(), upper.data(), cost.data(), row_lower.data(), row_upper.data());
}

void be_whole(const LinearModel& model, OsiClpSolverInterface& solver) {
    for (std::size_t c = 0; c < model.columns.size(); ++c)
        if (model.columns[c].whole)
            solver.setInteger(static_cast<int>(c));
}

std::vector<double> values_of(const OsiSolverInterface& solver) {
    return {solver.getColSolution(), solver.getColSolution() + solver.getNumCols()};
}

// Cuts that see one row or a few choices. Those of the simplex tableau, and heuristics that solve a model of their own,
// took three times as long on the random blocks of the tests and found no better plans.
void add_cuts(CbcModel& search) {
    CglProbing probing;
    probing.setMaxProbe(10);
    probing.setMaxLook(10);
    probing.setMaxElements(200);
    probing.setRowCuts(3);
    CglKnapsackCover cover;
    CglClique clique;
    clique.setStarCliqueReport(false);
    clique.setRowCliqueReport(false);
    CglMixedIntegerRounding2 rounding;
    search.addCutGenerator(&probing, -1, "probing");
    search.addCutGenerator(&cover, -1, "cover");
    search.addCutGenerator(&clique, -1, "clique");
    search.addCutGenerator(&rounding, -1, "rounding");
    CbcRounding near(search);
    search.addHeuristic(&near);
}

} // namespace

LinearAnswer solve_relaxed(const LinearModel& model) {
    OsiClpSolverInterface solver;
    hand_over(model, solver);
    solver.initialSolve();
    if (!solver.isProvenOptimal())
        return {solver.isProvenPrimalInfeasible() ? Outcome::none : Outcome::unknown, 0, 0, {}};
    const double points = model.constant - solver.getObjValue();
    return {Outcome::best, points, points, values_of(solver)};
}

LinearAnswer solve_whole(const LinearModel& model, const BranchBudget& budget) {
    OsiClpSolverInterface solver;
    hand_over(model, solver);
    be_whole(model, solver);
    CglPreProcess simpler;
    simpler.messageHandler()->setLogLevel(0);
    OsiSolverInterface* reduced = simpler.preProcess(solver, false, 5);
    if (!reduced)
        return {Outcome::none, 0, 0, {}};
    CbcModel search(*reduced);
    search.setLogLevel(0);
    search.messageHandler()->setLogLevel(0);
    search.solver()->setHintParam(OsiDoReducePrint, true, OsiHintDo);
    search.setMaximumNodes(budget.nodes);
    search.setNumberThreads(0);
    search.setNumberStrong(5); // columns tried before one is branched on
    if (budget.above)
        search.setCutoff(model.constant - *budget.above);
    if (budget.solutions)
        search.setMaximumSolutions(*budget.solutions);
    add_cuts(search);
    search.initialSolve();
    search.branchAndBound();
    const double bound = model.constant - search.getBestPossibleObjValue();
    if (!search.bestSolution())
        return {search.isProvenInfeasible() ? Outcome::none : Outcome::unknown, 0, bound, {}};
    const double points = model.constant - search.getObjValue();
    simpler.postProcess(*search.solver());
    return {search.isProvenOptimal() ? Outcome::best : Outcome::found, points, bound, values_of(solver)};
}

} // namespace amentum
