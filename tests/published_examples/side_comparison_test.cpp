// Side differences: the formulas in use on one example, and ranges of normal readings against their published table.
#include "measurement/joint_trials.h"
#include "measurement/rotation_force.h"
#include "measurement/side_comparison.h"

#include <doctest/doctest.h>

#include <cmath>

namespace amentum {
namespace {

void check_near(double got, double expected, double tolerance) {
    CAPTURE(got);
    CAPTURE(expected);
    CHECK(std::abs(got - expected) <= tolerance);
}

} // namespace

TEST_CASE("Bishop et al., Strength Cond J 38(6):27, 2016: the formulas at 900 and 1000, by hand") {
    const auto by = side_formulas(900, 1000);
    REQUIRE(by);
    check_near(by->over_total, 5.263, 1e-3);
    check_near(by->of_larger, 10.0, 1e-9);
    check_near(by->smaller_share, 90.0, 1e-9);
    check_near(by->over_mean, 10.526, 1e-3);
    check_near(by->symmetry_angle, 3.3475, 1e-4);
}

TEST_CASE("Harter, Ann Math Stat 31:1122, 1960: 95th percentiles of the range, 2.77 3.31 3.63 3.86 4.03") {
    // More digits by R: qtukey(.95, 2:6, Inf)
    const double expected[] = {2.771808, 3.314493, 3.633160, 3.857656, 4.030092};
    for (int n = 2; n <= 6; ++n)
        check_near(usual_range_of(n), expected[n - 2], 1e-5);
}

TEST_CASE(
    "Wilk et al., Am J Sports Med 21:61, 1993: 65 % at 180 and 61 % at 300 degrees a second, machine only") {
    check_near(*published_rotator_ratio(ForceBy::constant_speed_machine, 180), 0.65, 0);
    check_near(*published_rotator_ratio(ForceBy::constant_speed_machine, 300), 0.61, 0);
    const auto by_hand = published_rotator_ratio(ForceBy::hand_held, 180);
    REQUIRE_FALSE(by_hand);
    CHECK(by_hand.refusal().code == RefusalCode::method_does_not_apply);
    CHECK_FALSE(published_rotator_ratio(ForceBy::constant_speed_machine, 240));
}

} // namespace amentum
