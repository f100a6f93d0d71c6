#include "measurement/inside/quantiles.h"

#include <boost/math/distributions/chi_squared.hpp>
#include <boost/math/distributions/fisher_f.hpp>

#include <cassert>

namespace amentum {
namespace {

using Plain = boost::math::policies::policy<boost::math::policies::promote_double<false>>;

} // namespace

double chi_squared_quantile(double p, double freedom) {
    assert(p > 0 && p < 1 && freedom > 0);
    return boost::math::quantile(boost::math::chi_squared_distribution<double, Plain>(freedom), p);
}

double f_quantile(double p, double freedom_above, double freedom_below) {
    assert(p > 0 && p < 1 && freedom_above > 0 && freedom_below > 0);
    return boost::math::quantile(
        boost::math::fisher_f_distribution<double, Plain>(freedom_above, freedom_below), p);
}

} // namespace amentum
