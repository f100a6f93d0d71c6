#include "inference/forecast_score.h"

#include <cassert>
#include <cmath>
#include <numbers>

namespace amentum {

double forecast_score(const Estimate& forecast, double value) {
    assert(forecast.standard_error > 0);
    const double z = (value - forecast.value) / forecast.standard_error;
    const double density = std::exp(-z * z / 2) / std::sqrt(2 * std::numbers::pi);
    return forecast.standard_error * (z * (2 * normal_cdf(z) - 1) + 2 * density - std::numbers::inv_sqrtpi);
}

} // namespace amentum
