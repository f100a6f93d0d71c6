#include "measurement/joint_range.h"
#include "measurement/joint_trials.h"
#include "measurement/rotation_force.h"
#include "measurement/side_comparison.h"
#include "measurement/test_error_agreement.h"
#include "measurement/test_error_of_days.h"

#include <doctest/doctest.h>

#include <cmath>
#include <utility>

namespace amentum {
namespace {

TestResult taken(std::string test, Side side, double value, double error) {
    return {AthleteId{"a"},
            Date::from_days(20000),
            std::move(test),
            side,
            value,
            error,
            2,
            "",
            {},
            {},
            "tool 1",
            "R",
            PlaceMeasured::unknown};
}

} // namespace

TEST_CASE("Trials of an angle: the mean's error, and one more when they lie too far apart (hand values)") {
    const auto close = measure_angle_trials({95, 99}, 1.5, 1.9);
    REQUIRE(close);
    CHECK(close->mean.value == doctest::Approx(97));
    CHECK(close->mean.standard_error == doctest::Approx(std::sqrt(1.9 * 1.9 + 1.5 * 1.5 / 2)));
    CHECK(close->spread_allowed == doctest::Approx(1.959963985 * std::sqrt(2.0) * 1.5));
    CHECK_FALSE(close->one_more); // 4 apart, 4.16 allowed
    const auto apart = measure_angle_trials({95, 99.5}, 1.5, 1.9);
    REQUIRE(apart);
    CHECK(apart->one_more);
    const auto one = measure_angle_trials({95}, 1.5, 1.9);
    REQUIRE(one);
    CHECK(one->one_more);
    CHECK_FALSE(measure_angle_trials({}, 1.5, 1.9));
    CHECK_FALSE(measure_angle_trials({95}, 0, 1.9));
    CHECK_FALSE(measure_angle_trials({95}, 1.5, -1));
}

TEST_CASE("Five degrees lie inside the error: one day says measure again, two days or a large deficit more") {
    const double se = 4.8; // four angles of 2.4
    CHECK(*judge_range_deficit({5, se}, 5, 1) == RangeFinding::none_seen);
    CHECK(*judge_range_deficit({6, se}, 5, 1) == RangeFinding::measure_again);
    CHECK(*judge_range_deficit({6, se}, 5, 2) == RangeFinding::show_clinician);
    CHECK(*judge_range_deficit({12.8, se}, 5, 1) == RangeFinding::measure_again); // 5 + 1.645 x 4.8 = 12.896
    CHECK(*judge_range_deficit({13, se}, 5, 1) == RangeFinding::show_clinician);
    CHECK(*judge_range_deficit({-8, se}, 5, 3) == RangeFinding::none_seen);
    CHECK_FALSE(judge_range_deficit({6, 0}, 5, 1));
    CHECK_FALSE(judge_range_deficit({6, se}, -1, 1));
    CHECK_FALSE(judge_range_deficit({6, se}, 5, -1));
}

TEST_CASE("Total rotation: the sum, with both errors; two sides or raters refused") {
    const ShoulderRotation arm{taken("outward", Side::right, 100, 3), taken("inward", Side::right, 60, 4)};
    const auto total = measure_total_rotation(arm);
    REQUIRE(total);
    CHECK(total->value == 160);
    CHECK(total->standard_error == doctest::Approx(5));
    auto mixed = arm;
    mixed.internal.side = Side::left;
    REQUIRE_FALSE(measure_total_rotation(mixed));
    CHECK(measure_total_rotation(mixed).refusal().field == "side");
    mixed = arm;
    mixed.internal.rater = "Q";
    CHECK(measure_total_rotation(mixed).refusal().field == "rater");
}

TEST_CASE("Sides: sign kept, verdict by the difference's own error, each kind of test for itself") {
    const auto sides = compare_sides({900, 30}, {1000, 30}, SidesTested::one_at_a_time);
    REQUIRE(sides);
    // 200 sqrt(900^2 + 1000^2) 30 / 1900^2 = 2.236
    CHECK(sides->over_total.standard_error == doctest::Approx(2.236).epsilon(1e-3));
    CHECK(sides->verdict == SideVerdict::larger_than_error); // 5.263 / 2.236 = 2.35
    const auto mirrored = compare_sides({1000, 30}, {900, 30}, SidesTested::one_at_a_time);
    REQUIRE(mirrored);
    CHECK(mirrored->over_total.value == doctest::Approx(-sides->over_total.value));
    CHECK(mirrored->over_total.standard_error == doctest::Approx(sides->over_total.standard_error));
    CHECK(compare_sides({900, 45}, {1000, 45}, SidesTested::one_at_a_time)->verdict ==
          SideVerdict::cannot_tell);
    CHECK(compare_sides({900, 60}, {1000, 60}, SidesTested::one_at_a_time)->verdict ==
          SideVerdict::within_error);
    const auto shares = compare_sides({900, 30}, {1000, 30}, SidesTested::both_at_once);
    REQUIRE(shares);
    CHECK_FALSE(change_between(*sides, *shares));
    CHECK(change_between(*sides, *mirrored)->value == doctest::Approx(-10.526).epsilon(1e-4));
    CHECK_FALSE(compare_sides({0, 1}, {1000, 30}, SidesTested::one_at_a_time));
    CHECK_FALSE(compare_sides({900, 0}, {1000, 30}, SidesTested::one_at_a_time));
    CHECK_FALSE(compare_sides({900, 30}, {1000, 1001}, SidesTested::one_at_a_time));
}

TEST_CASE("Rotator forces: a ratio with its error; positions, hands and machines never mix") {
    const RotatorForce outward{taken("outward", Side::right, 120, 9.6), "face down", ForceBy::hand_held};
    RotatorForce inward{taken("inward", Side::right, 140, 11.2), "face down", ForceBy::hand_held};
    const auto ratio = measure_rotator_ratio(outward, inward);
    REQUIRE(ratio);
    CHECK(ratio->value == doctest::Approx(0.857143));
    CHECK(ratio->standard_error == doctest::Approx(0.857143 * 0.08 * std::sqrt(2.0)));
    const auto refused_for = [&outward](RotatorForce other) {
        const auto result = measure_rotator_ratio(outward, other);
        REQUIRE_FALSE(result);
        return result.refusal().field;
    };
    auto other = inward;
    other.position = "sitting";
    CHECK(refused_for(other) == "position");
    other = inward;
    other.by = ForceBy::constant_speed_machine;
    CHECK(refused_for(other) == "by");
    other = inward;
    other.result.side = Side::left;
    CHECK(refused_for(other) == "side");
    other = inward;
    other.result.device = "tool 2";
    CHECK(refused_for(other) == "device");
    other = inward;
    other.result.value = 0;
    CHECK(refused_for(other) == "inward");
    const auto for_mass = measure_force_for_body_mass(outward.result, {80, 0.8});
    REQUIRE(for_mass);
    CHECK(for_mass->value == doctest::Approx(1.5));
    CHECK(for_mass->standard_error == doctest::Approx(1.5 * std::hypot(0.08, 0.01)));
    CHECK_FALSE(measure_force_for_body_mass(outward.result, {10, 0.1}));
}

TEST_CASE("Repeats that cannot answer are refused") {
    CHECK_FALSE(estimate_error_of_trials({}));
    CHECK_FALSE(estimate_error_of_trials({{1}, {2}}));
    CHECK_FALSE(estimate_error_of_trials({{1, 2}})); // no degree of freedom once learning is taken out
    CHECK(estimate_error_of_trials({{1, 2}}, Learning::left_in));
    CHECK_FALSE(intraclass_correlations({{1, 2}}));
    CHECK_FALSE(intraclass_correlations({{1, 2}, {1, 2, 3}}));
    CHECK_FALSE(intraclass_correlations({{1, 1}, {1, 1}}));
    CHECK_FALSE(limits_of_agreement({1}, {2}));
    CHECK_FALSE(limits_of_agreement({1, 2}, {2}));
    CHECK_FALSE(estimate_error_of_days({}, 1));
    CHECK_FALSE(estimate_error_of_days({{{1, 5, 0}}, {{1, 7, 0}}}, 1));
    CHECK_FALSE(
        estimate_error_of_days({{{1, 5, 0}, {8, 5, 0}, {15, 5, 0}}}, 1)); // all alike: no error can be seen
    CHECK_FALSE(pool_with_published(0, [](double) { return 0.0; }));
}

} // namespace amentum
