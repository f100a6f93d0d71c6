#include "measurement/measurement_error.h"

#include "values/interval.h"

#include <cmath>
#include <numbers>

namespace amentum {

Result<double> standard_error_of_measurement(double sd, double icc) {
    if (!(sd >= 0))
        return refuse_range("sd", sd, 0, 1e6, "", "");
    if (!(icc >= 0 && icc <= 1))
        return refuse_range("icc", icc, 0, 1, "", "It is a share of the variance.");
    return sd * std::sqrt(1 - icc);
}

double smallest_detectable_change(double standard_error, double z) {
    assert(standard_error >= 0 && z > 0);
    return z * std::numbers::sqrt2 * standard_error;
}

Result<double> typical_error(const std::vector<double>& first, const std::vector<double>& second) {
    if (first.size() != second.size())
        return Refusal{RefusalCode::wrong_type, "Each athlete needs a first and a second value.", "second",
                       std::to_string(second.size()) + " values", std::to_string(first.size()) + " values"};
    const std::size_t n = first.size();
    if (n < 2)
        return Refusal{RefusalCode::too_few_data,
                       "The typical error needs two or more athletes tested twice.", "first",
                       std::to_string(n) + " pairs", "2 pairs or more"};
    double mean = 0, squares = 0;
    for (std::size_t i = 0; i < n; ++i)
        mean += (second[i] - first[i]) / static_cast<double>(n);
    for (std::size_t i = 0; i < n; ++i)
        squares += std::pow(second[i] - first[i] - mean, 2);
    return std::sqrt(squares / static_cast<double>(n - 1) / 2);
}

double expected_maximum(int n) {
    assert(n >= 1 && n <= 60);
    // Simpson's rule on [-9, 9]; the integrand is below 1e-17 outside for every n here.
    constexpr int steps = 3600;
    constexpr double width = 18.0 / steps;
    double sum = 0;
    for (int i = 0; i <= steps; ++i) {
        const double x = -9 + i * width;
        const double phi = std::exp(-x * x / 2) / std::sqrt(2 * std::numbers::pi);
        const double weight = i == 0 || i == steps ? 1 : (i % 2 == 1 ? 4 : 2);
        sum += weight * n * x * phi * std::pow(normal_cdf(x), n - 1);
    }
    return sum * width / 3;
}

} // namespace amentum
