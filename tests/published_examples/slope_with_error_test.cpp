// A slope when x has a known error. Fuller, Measurement Error Models, Wiley, 1987, example 1.2.1: corn on nitrogen in the
// soil. Data from memory; they give the printed estimates 0.344, 0.4232, 67.56 and standard error 0.1745; the other digits
// were computed by hand from the sums of squares 304.8545 (x) and the sum of products over 10.
#include "inference/slope_with_error.h"

#include <doctest/doctest.h>

#include <cmath>
#include <vector>

using namespace amentum;

namespace {

bool near(double value, double expected, double tolerance) {
    return std::abs(value - expected) < tolerance;
}

const std::vector<double> nitrogen{70, 97, 53, 64, 95, 64, 50, 70, 94, 69, 51},
    corn{86, 115, 90, 86, 110, 91, 99, 96, 99, 104, 96};

} // namespace

TEST_CASE("corn on nitrogen whose analysis has an error variance of 57") {
    const auto found = estimate_slope_with_error(nitrogen, corn, std::sqrt(57));
    REQUIRE(found);
    CHECK(near(found->uncorrected, 0.344039, 1e-6));
    CHECK(near(found->slope.value, 0.423159, 1e-6));
    CHECK(near(found->intercept, 67.5642, 1e-4));
    CHECK(near(found->slope.standard_error, 0.174485, 1e-6));
    CHECK(near(found->reliability, (304.8545455 - 57) / 304.8545455, 1e-8));
}

TEST_CASE("without an error of x it is least squares, and too large an error is refused") {
    // R: summary(lm(corn ~ nitrogen)): slope 0.3440389, standard error 0.1371236
    const auto exact = estimate_slope_with_error(nitrogen, corn, 0);
    REQUIRE(exact);
    CHECK(near(exact->slope.value, 0.3440389, 1e-7));
    CHECK(near(exact->slope.standard_error, 0.1371236, 1e-6));
    CHECK_FALSE(estimate_slope_with_error(nitrogen, corn, std::sqrt(153)));
    CHECK(estimate_slope_with_error(nitrogen, corn, std::sqrt(152)));
    const std::vector<double> two{1, 2};
    CHECK_FALSE(estimate_slope_with_error(two, two, 0));
}
