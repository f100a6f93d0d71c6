#include "values/interval.h"

#include <cmath>
#include <numbers>

namespace amentum {

double normal_cdf(double z) {
    return 0.5 * std::erfc(-z / std::numbers::sqrt2);
}

} // namespace amentum
