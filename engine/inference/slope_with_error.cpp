#include "inference/slope_with_error.h"

#include "values/shortest_decimal.h"

#include <cassert>
#include <cmath>
#include <numeric>

namespace amentum {
namespace {

constexpr double least_ratio = 2; // of the variance of x to that of its error; proposal of this project

double mean_of(std::span<const double> values) {
    return std::accumulate(values.begin(), values.end(), 0.0) / static_cast<double>(values.size());
}

} // namespace

Result<CorrectedSlope> estimate_slope_with_error(std::span<const double> x, std::span<const double> y,
                                                 double x_error) {
    assert(x.size() == y.size() && x_error >= 0);
    const double n = static_cast<double>(x.size());
    if (x.size() < 3)
        return Refusal{RefusalCode::too_few_data, "A slope with its error needs three points.", "x",
                       std::to_string(x.size()), "3 or more"};
    const double mean_x = mean_of(x), mean_y = mean_of(y);
    double xx = 0, xy = 0;
    for (std::size_t i = 0; i < x.size(); ++i) {
        xx += (x[i] - mean_x) * (x[i] - mean_x) / (n - 1);
        xy += (x[i] - mean_x) * (y[i] - mean_y) / (n - 1);
    }
    const double error = x_error * x_error, left = xx - error;
    if (!(xx > least_ratio * error))
        return Refusal{RefusalCode::too_few_data,
                       "These values of x differ hardly more than their error alone would make them differ.",
                       "x_error", format_shortest(x_error),
                       "below " + format_shortest(std::sqrt(xx / least_ratio))};
    const double slope = xy / left;
    double scatter = 0;
    for (std::size_t i = 0; i < x.size(); ++i)
        scatter += std::pow(y[i] - mean_y - slope * (x[i] - mean_x), 2) / (n - 2);
    const double variance = (xx * scatter + slope * slope * error * error) / ((n - 1) * left * left);
    return CorrectedSlope{{slope, std::sqrt(variance)}, mean_y - slope * mean_x, xy / xx, left / xx};
}

} // namespace amentum
