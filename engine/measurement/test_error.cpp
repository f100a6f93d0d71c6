#include "measurement/test_error.h"

#include "measurement/inside/quantiles.h"

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

double mean_of(const std::vector<double>& row) {
    double sum = 0;
    for (const double value : row)
        sum += value;
    return sum / static_cast<double>(row.size());
}

// Normal equations for what trials 2, 3, ... add, each row's own level swept out.
struct Equations {
    std::size_t size;
    std::vector<double> matrix; // size x size, row by row
    std::vector<double> right;
    double& at(std::size_t i, std::size_t j) { return matrix[i * size + j]; }
};

Equations equations_of(const RepeatTable& rows, std::size_t trials) {
    Equations e{trials - 1, std::vector<double>((trials - 1) * (trials - 1)),
                std::vector<double>(trials - 1)};
    for (const auto& row : rows) {
        const double mean = mean_of(row), share = 1 / static_cast<double>(row.size());
        for (std::size_t i = 1; i < row.size(); ++i) {
            e.right[i - 1] += row[i] - mean;
            for (std::size_t j = 1; j < row.size(); ++j)
                e.at(i - 1, j - 1) += (i == j ? 1 : 0) - share;
        }
    }
    return e;
}

// Gauss-Jordan without exchange of rows: the matrix is symmetric and positive definite, for every row begins at
// trial 1. The matrix becomes its inverse, the right side the solution.
void solve_in_place(Equations& e) {
    for (std::size_t k = 0; k < e.size; ++k) {
        const double pivot = 1 / e.at(k, k);
        e.at(k, k) = 1;
        for (std::size_t j = 0; j < e.size; ++j)
            e.at(k, j) *= pivot;
        e.right[k] *= pivot;
        for (std::size_t i = 0; i < e.size; ++i) {
            if (i == k)
                continue;
            const double factor = e.at(i, k);
            e.at(i, k) = 0;
            for (std::size_t j = 0; j < e.size; ++j)
                e.at(i, j) -= factor * e.at(k, j);
            e.right[i] -= factor * e.right[k];
        }
    }
}

double sum_of_squares(const RepeatTable& rows, const std::vector<double>& added) {
    double squares = 0;
    for (const auto& row : rows) {
        std::vector<double> rest = row;
        for (std::size_t j = 1; j < row.size() && !added.empty(); ++j)
            rest[j] -= added[j - 1];
        const double mean = mean_of(rest);
        for (const double value : rest)
            squares += std::pow(value - mean, 2);
    }
    return squares;
}

Refusal too_few(std::string given) {
    return {RefusalCode::too_few_data,
            "The error between trials needs two or more trials of two or more athletes' days, and more "
            "values than "
            "it takes out.",
            "", std::move(given), "one degree of freedom or more"};
}

} // namespace

EstimatedError error_with_band(double error, double freedom) {
    return {error,
            freedom,
            {error * std::sqrt(freedom / chi_squared_quantile(0.9, freedom)),
             error * std::sqrt(freedom / chi_squared_quantile(0.1, freedom))}};
}

Result<ErrorOfTrials> estimate_error_of_trials(const RepeatTable& table, Learning learning) {
    RepeatTable rows;
    std::size_t trials = 0, values = 0;
    for (const auto& row : table) {
        if (row.size() < 2)
            continue;
        if (row.size() > 60)
            return refuse_range("trials", static_cast<double>(row.size()), 2, 60, "");
        rows.push_back(row);
        trials = std::max(trials, row.size());
        values += row.size();
    }
    if (rows.empty())
        return too_few("no row of two trials");
    const bool removed = learning == Learning::removed;
    const double freedom = static_cast<double>(values) - static_cast<double>(rows.size()) -
                           (removed ? static_cast<double>(trials) - 1 : 0);
    if (freedom < 1)
        return too_few(std::to_string(values) + " values in " + std::to_string(rows.size()) + " rows");
    auto equations = equations_of(rows, trials);
    if (removed)
        solve_in_place(equations);
    const double squares = sum_of_squares(rows, removed ? equations.right : std::vector<double>{});
    const double error = std::sqrt(squares / freedom);
    ErrorOfTrials estimate{
        error_with_band(error, freedom), static_cast<int>(rows.size()), static_cast<int>(values), {}};
    for (std::size_t j = 0; removed && j + 1 < trials; ++j)
        estimate.learning.push_back({equations.right[j], error * std::sqrt(equations.at(j, j))});
    return estimate;
}

int repeats_to_settle(double freedom, double factor) {
    assert(freedom >= 0 && factor > 1);
    const auto within = [factor](double df) {
        return std::sqrt(df / chi_squared_quantile(0.1, df)) <= factor &&
               std::sqrt(chi_squared_quantile(0.9, df) / df) <= factor;
    };
    int more = 0;
    while (freedom + more <= 0 || !within(freedom + more))
        ++more;
    return more;
}

} // namespace amentum
