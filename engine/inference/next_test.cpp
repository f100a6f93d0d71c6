#include "inference/next_test.h"

#include "values/interval.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <limits>
#include <numbers>

namespace amentum {
namespace {

constexpr double endless = std::numeric_limits<double>::infinity();

struct Line {
    double at, slope;
    double from; // Z from which it is the largest
};

double density(double z) {
    return std::isinf(z) ? 0 : std::exp(-z * z / 2) / std::sqrt(2 * std::numbers::pi);
}

// The lines that are largest somewhere, from the least slope to the greatest.
std::vector<Line> upper_edge(std::vector<Line> lines) {
    std::sort(lines.begin(), lines.end(), [](const Line& a, const Line& b) {
        return a.slope != b.slope ? a.slope < b.slope : a.at < b.at;
    });
    std::vector<Line> edge;
    for (Line line : lines) {
        line.from = -endless;
        while (!edge.empty()) {
            const Line& last = edge.back();
            line.from = last.slope == line.slope ? -endless : (last.at - line.at) / (line.slope - last.slope);
            if (last.slope != line.slope && line.from > last.from)
                break;
            edge.pop_back();
            line.from = -endless;
        }
        edge.push_back(line);
    }
    return edge;
}

} // namespace

double expected_largest(std::span<const double> at, std::span<const double> slope) {
    assert(!at.empty() && at.size() == slope.size());
    std::vector<Line> lines;
    for (std::size_t j = 0; j < at.size(); ++j)
        lines.push_back({at[j], slope[j], 0});
    const auto edge = upper_edge(std::move(lines));
    double sum = 0;
    for (std::size_t i = 0; i < edge.size(); ++i) {
        const double low = edge[i].from, high = i + 1 < edge.size() ? edge[i + 1].from : endless;
        sum += edge[i].at * (normal_cdf(high) - normal_cdf(low)) +
               edge[i].slope * (density(low) - density(high));
    }
    return sum;
}

double value_of_test(std::span<const double> expected_gains, const TestOutlook& test) {
    assert(expected_gains.size() >= 2 && test.with_gains.size() == expected_gains.size());
    assert(test.result_variance > 0);
    std::vector<double> slope;
    for (const double covariance : test.with_gains)
        slope.push_back(covariance / std::sqrt(test.result_variance));
    const double best = *std::max_element(expected_gains.begin(), expected_gains.end());
    return std::max(0.0, expected_largest(expected_gains, slope) - best);
}

DoubtAtChoice doubt_at_choice(const UsualLevelAhead& level) {
    assert(level.test_in >= 0 && level.test_in <= level.choice_in && level.error_variance > 0);
    assert(level.drift >= 0 && level.usual_doubt >= 0);
    const auto of_z = [&](double own) { return (level.usual_doubt + own) / (1 + level.usual_doubt + own); };
    const double still_to_come = level.drift * (level.choice_in - level.test_in);
    if (!level.variance_today)
        return {1, of_z(level.error_variance + still_to_come)};
    const double then = *level.variance_today + level.drift * level.test_in;
    const double tested = then * level.error_variance / (then + level.error_variance);
    return {of_z(then + still_to_come), of_z(tested + still_to_come)};
}

TestOutlook test_outlook(const UsualLevelAhead& level, std::size_t which, std::size_t gains,
                         double gain_a_sd) {
    const auto doubt = doubt_at_choice(level);
    TestOutlook outlook{1, std::vector<double>(gains, 0.0)};
    outlook.with_gains[which] = gain_a_sd * std::sqrt(std::max(0.0, doubt.without - doubt.with_test));
    return outlook;
}

TestOutlook test_outlook(const LevelAhead& level, std::size_t which, std::size_t gains, double gain_a_unit) {
    assert(level.variance_today >= 0 && level.drift >= 0 && level.days_ahead >= 0 && which < gains);
    const double then = level.variance_today + level.drift * level.days_ahead;
    TestOutlook outlook{then + level.error_variance, std::vector<double>(gains, 0.0)};
    outlook.with_gains[which] = gain_a_unit * then;
    return outlook;
}

} // namespace amentum
