#include "measurement/repetition_chart.h"

#include <array>
#include <cassert>

namespace amentum {
namespace {

struct ChartRow {
    double repetitions;
    double fraction;
};

constexpr std::array<ChartRow, 11> rows{{{1, 1.00},
                                         {2, 0.95},
                                         {3, 0.93},
                                         {4, 0.90},
                                         {5, 0.87},
                                         {6, 0.85},
                                         {7, 0.83},
                                         {8, 0.80},
                                         {9, 0.77},
                                         {10, 0.75},
                                         {12, 0.70}}};

} // namespace

double chart_fraction(double n) {
    assert(n >= 1 && n <= most_chart_repetitions);
    std::size_t i = 1;
    while (rows[i].repetitions < n)
        ++i;
    const auto& [left, high] = rows[i - 1];
    const auto& [right, low] = rows[i];
    return n == right ? low : high + (low - high) * (n - left) / (right - left);
}

} // namespace amentum
