// The LP file format: free words and numbers under headings. Infinite bounds are written as such, a row between two
// numbers twice, and a row without entries with a factor of nothing.
#include "planning/linear_model.h"
#include "values/shortest_decimal.h"

#include <cmath>

namespace amentum {
namespace {

std::string term(double factor, const std::string& name) {
    return (factor < 0 ? " - " : " + ") + format_shortest(std::abs(factor)) + " " + name;
}

std::string sum_of(const LinearModel& model, const LinearRow& row) {
    std::string text;
    for (const auto& entry : row.entries)
        text += term(entry.factor, model.columns[static_cast<std::size_t>(entry.column)].name);
    return text.empty() ? term(0, model.columns.front().name) : text;
}

std::string row_text(const LinearModel& model, const LinearRow& row) {
    const std::string sum = sum_of(model, row);
    if (row.lower == row.upper)
        return " " + row.name + ":" + sum + " = " + format_shortest(row.lower) + "\n";
    std::string text;
    if (std::isfinite(row.upper))
        text += " " + row.name + ":" + sum + " <= " + format_shortest(row.upper) + "\n";
    if (std::isfinite(row.lower))
        text += " " + row.name + "_low:" + sum + " >= " + format_shortest(row.lower) + "\n";
    return text;
}

} // namespace

std::string linear_model_text(const LinearModel& model) {
    std::string text = "Maximize\n points:", bounds, whole;
    for (const auto& column : model.columns) {
        if (column.points != 0)
            text += term(column.points, column.name);
        bounds += " " + format_shortest(column.lower) + " <= " + column.name +
                  (std::isfinite(column.upper) ? " <= " + format_shortest(column.upper) : "") + "\n";
        if (column.whole)
            whole += " " + column.name + "\n";
    }
    text += "\nSubject To\n";
    for (const auto& row : model.rows)
        text += row_text(model, row);
    return text + "Bounds\n" + bounds + (whole.empty() ? "" : "General\n" + whole) + "End\n";
}

} // namespace amentum
