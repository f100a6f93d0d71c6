// The distributions that this program takes from Boost.Math, as R 4.2.2 prints pt, qt, qchisq, qnorm and qf; Student's t
// cumulative at 2.5 also as the GNU Scientific Library gives it. Asked of our own functions, so that a wrong tail or a wrong
// degree of freedom is seen. Gamma, inverse gamma and non-central t are not used here, so nothing is asked of them.
#include "inference/change.h"
#include "inference/normal_quantile.h"
#include "measurement/inside/quantiles.h"
#include "values/interval.h"

#include <doctest/doctest.h>

#include <cmath>

using namespace amentum;

namespace {

bool near(double value, double expected, double tolerance) {
    return std::abs(value - expected) < tolerance;
}

// Chance that Student's t is below z: a change z errors above the smallest worthwhile one, without a prior.
double below(double z, double freedom) {
    return *judge_measured_change({z + 0.5, 1, 0.5, {0, 1}, freedom}).flat_chance_gained;
}

} // namespace

TEST_CASE("Student's t") {
    CHECK(near(below(2.5, 7.3), 0.980174882667200, 1e-11));
    CHECK(near(below(2.119905299221254, 16), 0.975, 1e-11)); // qt(0.975, 16)
    CHECK(near(below(-2.119905299221254, 16), 0.025, 1e-11));
}

TEST_CASE("chi-squared and F quantiles") {
    CHECK(near(chi_squared_quantile(0.05, 16), 7.96164557237855, 1e-11));
    CHECK(near(chi_squared_quantile(0.95, 16), 26.29622760486424, 1e-11));
    CHECK(near(f_quantile(0.9, 5, 15), 2.27302244786757, 1e-11));
    // 90 % limits of a typical error of 15.361215 on 16 degrees of freedom (17 people, two readings each)
    CHECK(near(15.361215 * std::sqrt(16 / chi_squared_quantile(0.95, 16)), 11.982, 1e-3));
    CHECK(near(15.361215 * std::sqrt(16 / chi_squared_quantile(0.05, 16)), 21.776, 1e-3));
}

TEST_CASE("the normal distribution") {
    CHECK(near(normal_cdf(1.5), 0.933192798731142, 1e-14));
    CHECK(near(normal_cdf(-4), 3.16712418331199e-05, 1e-18));
    CHECK(near(normal_quantile(0.975), 1.959963984540054, 1e-14));
}
