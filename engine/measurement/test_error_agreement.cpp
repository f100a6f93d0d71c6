#include "measurement/test_error_agreement.h"

#include "measurement/inside/quantiles.h"

#include <cmath>

namespace amentum {
namespace {

struct MeanSquares {
    double n, k, between_rows, between_columns, residual, within_rows;
};

Result<Done> check_table(const RepeatTable& table) {
    if (table.size() < 2 || table.size() > 10000)
        return refuse_range("rows", static_cast<double>(table.size()), 2, 10000, "", "A row is one athlete.");
    const std::size_t columns = table.front().size();
    if (columns < 2 || columns > 60)
        return refuse_range("columns", static_cast<double>(columns), 2, 60, "",
                            "A column is one trial, rater or tool.");
    for (const auto& row : table)
        if (row.size() != columns)
            return Refusal{RefusalCode::wrong_type, "Every athlete needs a value in every column.", "values",
                           std::to_string(row.size()) + " in one row, " + std::to_string(columns) +
                               " in the first",
                           "as many in each row"};
    return Done{};
}

MeanSquares mean_squares(const RepeatTable& table) {
    const double n = static_cast<double>(table.size()), k = static_cast<double>(table.front().size());
    double grand = 0, rows = 0, columns = 0, total = 0;
    std::vector<double> of_column(table.front().size());
    for (const auto& row : table)
        for (std::size_t j = 0; j < row.size(); ++j) {
            grand += row[j] / (n * k);
            of_column[j] += row[j] / n;
        }
    for (const auto& row : table) {
        double mean = 0;
        for (const double value : row) {
            mean += value / k;
            total += std::pow(value - grand, 2);
        }
        rows += k * std::pow(mean - grand, 2);
    }
    for (const double mean : of_column)
        columns += n * std::pow(mean - grand, 2);
    const double residual = std::max(0.0, total - rows - columns);
    return {n,
            k,
            rows / (n - 1),
            columns / (k - 1),
            residual / ((n - 1) * (k - 1)),
            (columns + residual) / (n * (k - 1))};
}

// (F - 1) / (F + k - 1), at the estimate and with F divided and multiplied by its 90th percentiles.
Agreement from_ratio(const MeanSquares& m, double within, double freedom) {
    const auto at = [&m](double f) { return (f - 1) / (f + m.k - 1); };
    const double f = m.between_rows / within;
    return {at(f), {at(f / f_quantile(0.9, m.n - 1, freedom)), at(f * f_quantile(0.9, freedom, m.n - 1))}};
}

Agreement form_two(const MeanSquares& m) {
    const double b = m.between_rows, j = m.between_columns, e = m.residual;
    const double r = (b - e) / (b + (m.k - 1) * e + m.k * (j - e) / m.n);
    const double x = m.k * r / (m.n * (1 - r)), y = 1 + m.k * r * (m.n - 1) / (m.n * (1 - r));
    const double freedom = std::pow(x * j + y * e, 2) /
                           (std::pow(x * j, 2) / (m.k - 1) + std::pow(y * e, 2) / ((m.n - 1) * (m.k - 1)));
    const double below = f_quantile(0.9, m.n - 1, freedom), above = f_quantile(0.9, freedom, m.n - 1);
    const double rest = m.k * j + (m.k * m.n - m.k - m.n) * e;
    return {
        r,
        {m.n * (b - below * e) / (below * rest + m.n * b), m.n * (above * b - e) / (rest + m.n * above * b)}};
}

Agreement of_mean(const Agreement& single, double k) {
    const auto stepped_up = [k](double r) { return k * r / (1 + (k - 1) * r); };
    return {stepped_up(single.value), {stepped_up(single.band.low), stepped_up(single.band.high)}};
}

} // namespace

Result<IntraclassCorrelations> intraclass_correlations(const RepeatTable& table) {
    if (const auto sound = check_table(table); !sound)
        return sound.refusal();
    const MeanSquares m = mean_squares(table);
    if (!(m.between_rows > 0 && m.residual > 0))
        return Refusal{RefusalCode::too_few_data,
                       "The correlation needs athletes who differ, and repeats that do.", "values",
                       "all alike", "values that differ between and within rows"};
    IntraclassCorrelations all{{from_ratio(m, m.within_rows, m.n * (m.k - 1)), form_two(m),
                                from_ratio(m, m.residual, (m.n - 1) * (m.k - 1))},
                               {},
                               m.between_rows,
                               m.between_columns,
                               m.residual,
                               m.within_rows};
    for (int form = 0; form < 3; ++form)
        all.of_mean[form] = of_mean(all.single[form], m.k);
    return all;
}

Result<LimitsOfAgreement> limits_of_agreement(const std::vector<double>& first,
                                              const std::vector<double>& second, double z) {
    if (first.size() != second.size())
        return Refusal{RefusalCode::wrong_type, "Each first value needs its second.", "second",
                       std::to_string(second.size()) + " values", std::to_string(first.size()) + " values"};
    if (first.size() < 2)
        return Refusal{RefusalCode::too_few_data, "Limits of agreement need two or more pairs.", "first",
                       std::to_string(first.size()) + " pairs", "2 pairs or more"};
    const double n = static_cast<double>(first.size());
    double bias = 0, squares = 0;
    for (std::size_t i = 0; i < first.size(); ++i)
        bias += (second[i] - first[i]) / n;
    for (std::size_t i = 0; i < first.size(); ++i)
        squares += std::pow(second[i] - first[i] - bias, 2);
    const double spread = std::sqrt(squares / (n - 1)), of_limit = spread * std::sqrt(3 / n);
    return LimitsOfAgreement{
        {bias, spread / std::sqrt(n)}, spread, {bias - z * spread, of_limit}, {bias + z * spread, of_limit}};
}

} // namespace amentum
