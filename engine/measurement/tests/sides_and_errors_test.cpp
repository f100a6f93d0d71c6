// Refusals of the smaller methods: sides that cannot be compared, ranges, lists that do not match.
#include "measurement/allometry.h"
#include "measurement/ball_drag.h"
#include "measurement/ball_flight.h"
#include "measurement/body_mass_lifts.h"
#include "measurement/correlation.h"
#include "measurement/growth.h"
#include "measurement/joint_range.h"
#include "measurement/jump_height.h"
#include "measurement/measurement_error.h"
#include "measurement/session_velocity.h"
#include "measurement/split_squat.h"

#include <doctest/doctest.h>

#include <cmath>

namespace amentum {
namespace {

TestResult angle(Side side, double degrees) {
    return {
        AthleteId{"a"},        Date::from_days(20000), "hip", side, degrees, 3, 2, "", {}, {}, "tool 1", "R",
        PlaceMeasured::unknown};
}

} // namespace

TEST_CASE("Two sides: the difference with both errors") {
    const auto difference = measure_side_difference(angle(Side::left, 40), angle(Side::right, 36));
    REQUIRE(difference);
    CHECK(difference->value == doctest::Approx(4));
    CHECK(difference->standard_error == doctest::Approx(3 * std::sqrt(2.0)));
}

TEST_CASE("Two sides by two raters, tools, days or athletes, or one side twice: refused") {
    const auto field = [](const TestResult& a, const TestResult& b) {
        const auto result = measure_side_difference(a, b);
        REQUIRE_FALSE(result);
        CHECK(result.refusal().code == RefusalCode::method_does_not_apply);
        return result.refusal().field;
    };
    const TestResult left = angle(Side::left, 40);
    TestResult right = angle(Side::right, 36);
    right.rater = "Q";
    CHECK(field(left, right) == "rater");
    right = angle(Side::right, 36);
    right.device = "tool 2";
    CHECK(field(left, right) == "device");
    right = angle(Side::right, 36);
    right.date = Date::from_days(20001);
    CHECK(field(left, right) == "date");
    right = angle(Side::right, 36);
    right.athlete = AthleteId{"b"};
    CHECK(field(left, right) == "athlete");
    CHECK(field(left, left) == "side");
    right = angle(Side::none, 36);
    CHECK(field(left, right) == "side");
}

TEST_CASE("A false flag is even when the deficit is the threshold, and rarer with a better tool") {
    CHECK(chance_of_false_flag(5, 5, 2.4) == doctest::Approx(0.5));
    CHECK(chance_of_false_flag(0, 5, 1.5) < chance_of_false_flag(0, 5, 2.4));
}

TEST_CASE("Typical error: standard deviation of the differences over the root of 2 (hand value)") {
    const auto error = typical_error({10, 12, 14}, {11, 12, 16}); // differences 1, 0, 2: standard deviation 1
    REQUIRE(error);
    CHECK(*error == doctest::Approx(1 / std::sqrt(2.0)));
    CHECK_FALSE(typical_error({10}, {11}));
    CHECK_FALSE(typical_error({10, 11}, {11}));
    const auto shifted =
        typical_error({10, 12, 14}, {13, 14, 18}); // a shift of all is not an error of the test
    REQUIRE(shifted);
    CHECK(*shifted == doctest::Approx(*error));
}

TEST_CASE("More throws in a session bring its error down to that between sessions, and no further") {
    const VelocityErrors errors{1.0, 0.8};
    double before = 10;
    for (int n = 1; n <= 60; ++n) {
        const auto change = smallest_session_change(n, errors);
        REQUIRE(change);
        CHECK(*change < before);
        CHECK(*change > 1.96 * std::sqrt(2.0) * 0.8 * 0.9999);
        before = *change;
    }
    CHECK_FALSE(measure_session_velocity({}, errors));
    CHECK_FALSE(measure_session_velocity({30, 31}, {-1, 0.8}));
}

TEST_CASE("Ranges hold") {
    const Mass heavy = Mass::kilograms(300), body = Mass::kilograms(80);
    CHECK_FALSE(estimate_push_up_load(PushUp::regular, heavy));
    CHECK_FALSE(estimate_lead_leg_load(LeadLegModel::model_a, Sex::male, body, Mass::kilograms(-1)));
    CHECK_FALSE(jump_height_from_flight_time(Duration::seconds(550))); // milliseconds typed as seconds
    CHECK_FALSE(jump_height_from_take_off_velocity(Speed::metres_per_second(0)));
    CHECK_FALSE(fisher_z(1, 20));
    CHECK_FALSE(fisher_z(0.5, 3));
    CHECK_FALSE(correlation_from_tau(1.2));
    CHECK_FALSE(standard_error_of_measurement(20, 1.2));
    CHECK_FALSE(allometric_strength(Mass::kilograms(0), body, 0.67));
    CHECK_FALSE(ball_mass_exponent({body}, {Speed::metres_per_second(10)}));
    CHECK_FALSE(ball_range(Speed::metres_per_second(0), Angle::degrees(30), Length::metres(1)));
    CHECK_FALSE(ball_speed_from_distance({Length::metres(10), Length::metres(1)}, Angle::degrees(-20)));
    CHECK_FALSE(ball_decay_length(rule_ball(BallKind::baseball), {5, 1.225}));
    const Growing grown{Sex::male, 25, Length::centimetres(180), std::nullopt, std::nullopt};
    CHECK_FALSE(estimate_maturity_offset(OffsetEquation::moore, grown));
}

TEST_CASE("Mirwald's equation asks for what it needs; a crown above the head is refused") {
    Growing boy{Sex::male, 13, Length::centimetres(156), std::nullopt, Mass::kilograms(45)};
    CHECK(estimate_maturity_offset(OffsetEquation::mirwald, boy).refusal().field == "sitting_height");
    boy.stature = Length::centimetres(105);
    boy.sitting_height = Length::centimetres(110);
    CHECK(estimate_maturity_offset(OffsetEquation::mirwald, boy).refusal().field == "sitting_height");
    CHECK(growth_band(-1.2) == GrowthBand::before);
    CHECK(growth_band(0.3) == GrowthBand::around);
    CHECK(growth_band(1.4) == GrowthBand::after);
}

} // namespace amentum
