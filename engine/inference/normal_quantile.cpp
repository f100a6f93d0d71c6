#include "inference/normal_quantile.h"

#include <boost/math/special_functions/erf.hpp>

#include <cassert>
#include <numbers>

namespace amentum {

double normal_quantile(double p) {
    assert(p > 0 && p < 1);
    using namespace boost::math::policies;
    const policy<promote_double<false>> plain;
    // The complementary form keeps the digits of a small tail.
    return -std::numbers::sqrt2 * boost::math::erfc_inv(2 * p, plain);
}

} // namespace amentum
