#include "inference/value_of_information.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <numbers>

namespace amentum {
namespace {

double normal_density(double z) {
    return std::exp(-z * z / 2) / std::sqrt(2 * std::numbers::pi);
}

} // namespace

TwoLevers compare_two_levers(Estimate first, Estimate second, double correlation) {
    assert(std::abs(correlation) < 1);
    const double a = first.standard_error, b = second.standard_error;
    const double s = std::sqrt(a * a + b * b - 2 * correlation * a * b);
    const double d = (first.value - second.value) / s;
    const double best = first.value * normal_cdf(d) + second.value * normal_cdf(-d) + s * normal_density(d);
    return {normal_cdf(d), best, best - std::max(first.value, second.value)};
}

} // namespace amentum
