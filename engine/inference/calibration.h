// Were the forecasts right as often as they said? Counted on values that came after, or were held back.
//
// Coverage: of n forecasts N(m, s^2), how many values lay inside the central interval of a stated chance, and between which
// chances that count puts the true one, 95 % [Wilson1927]:
//   (p + z^2/2n +- z sqrt(p(1 - p)/n + z^2/4n^2)) / (1 + z^2/n)
// Probability integral transform: u = Phi((y - m)/s) is uniform when forecasts say what they know [Gneiting2007]: a hump in the
// middle: too cautious; at both ends: too sure; at one: biased. How uneven a histogram is by chance: chi-squared.
// Score: the mean of forecast_score.h, ours beside a rival's, in the values' unit; smaller is better.
// Units: those of the values. Contract: variances above 0, one forecast or more; 2 bins or more.
// What it cannot tell: forecasts of one athlete go together, so the intervals of the counts are somewhat too short.
//
// Example: 81 of 263: 0.308, interval 0.2553 to 0.3662 [Newcombe1998].
#pragma once

#include "inference/trajectory.h"
#include "values/interval.h"

#include <span>
#include <vector>

namespace amentum {

struct HeldForecast {
    StateOnDay forecast; // of the value, its error in it
    double value;
    StateOnDay rival;
};

struct Coverage {
    double stated; // 0 to 1
    int held;
    int all;
    Interval true_chance; // 95 %
};

Interval chance_interval(int held, int all, double z = z95);
Coverage count_coverage(std::span<const HeldForecast> forecasts, double stated);

struct UniformCheck {
    std::vector<int> counts; // of equal bins of 0 to 1
    double chance;           // of a histogram at least as uneven, were they uniform
};
UniformCheck check_uniform(std::span<const double> values, int bins);
std::vector<double> integral_transform(std::span<const HeldForecast> forecasts);

// The share by which ours is smaller, 1 - ours / rival of the means, its error by pairs: SD of (ours - ratio rival) over
// sqrt(n) and the rival's mean. Contract: two forecasts or more, rival's mean above 0.
struct ScoreComparison {
    double ours, rival; // means
    Estimate share;     // above 0, ours is better
};
ScoreComparison compare_scores(std::span<const HeldForecast> forecasts);

} // namespace amentum
