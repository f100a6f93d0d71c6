// How repeated trials become one value, and which trials do not belong together.
#include "measurement/jump_height.h"
#include "measurement/measure_test.h"
#include "readings_of_a_day.h"

#include <doctest/doctest.h>

#include <cmath>
#include <numbers>

namespace amentum {
namespace {

using namespace tests;

bool has_warning(const TestResult& result, const std::string& part) {
    for (const auto& warning : result.warnings)
        if (warning.find(part) != std::string::npos)
            return true;
    return false;
}

Reading thrown_far(double metres, std::optional<double> degrees, int trial = 1) {
    Reading each = reading(trial);
    each.distance = Length::metres(metres);
    each.release_height = Length::metres(1.8);
    if (degrees)
        each.release_angle = Angle::degrees(*degrees);
    return each;
}

TestKind ball_kind() {
    TestKind kind = kind_of(Measure::ball_speed, TestUnit::metre_per_second, 2, 25);
    kind.ball_mass = Mass::pounds(4);
    return kind;
}

} // namespace

TEST_CASE("A session's velocity is the mean of its throws, not the best") {
    const auto result = measure_test(
        velocity_kind(), {throw_of(35.8, 1), throw_of(36.2, 2), throw_of(36.0, 3), throw_of(36.4, 4)});
    REQUIRE(result);
    CHECK(result->value == doctest::Approx(36.1));
    CHECK(result->standard_error == doctest::Approx(std::sqrt(0.4 * 0.4 + 0.3 * 0.3 / 4)));
    CHECK(result->method == "mean of 4 throws, read by radar, radar 1, out_of_hand");
    CHECK(result->device == "radar 1");
    CHECK(result->place == PlaceMeasured::out_of_hand);
    CHECK(result->warnings.empty());
}

TEST_CASE("The radar's angle is taken out, and its doubt added") {
    Reading off = throw_of(36.0 * std::cos(20 * std::numbers::pi / 180));
    off.radar_angle = Angle::degrees(20);
    const auto result = measure_test(velocity_kind(), {off});
    REQUIRE(result);
    CHECK(result->value == doctest::Approx(36.0));
    CHECK(result->standard_error > std::hypot(0.4, 0.3) + 0.1);
    off.radar_angle = Angle::degrees(50);
    const auto far = measure_test(velocity_kind(), {off});
    REQUIRE_FALSE(far);
    CHECK(far.refusal().field == "radar_angle");
}

TEST_CASE("Two radars, two places, two raters: refused, with the field") {
    Reading other = throw_of(36, 2);
    other.device = "radar 2";
    const auto devices = measure_test(velocity_kind(), {throw_of(36), other});
    REQUIRE_FALSE(devices);
    CHECK(devices.refusal().field == "device");
    CHECK(devices.refusal().sentence.find("radar 2") != std::string::npos);
    other = throw_of(36, 2);
    other.place = PlaceMeasured::at_plate;
    const auto places = measure_test(velocity_kind(), {throw_of(36), other});
    REQUIRE_FALSE(places);
    CHECK(places.refusal().field == "place");
    other = throw_of(36, 2);
    other.rater = "Q";
    const auto raters = measure_test(velocity_kind(), {throw_of(36), other});
    REQUIRE_FALSE(raters);
    CHECK(raters.refusal().field == "rater");
}

TEST_CASE("One mistyped throw among good ones is caught: each is held against what is plausible") {
    const auto pitch = measure_test(velocity_kind(), {throw_of(36, 1), throw_of(6.3, 2), throw_of(36, 3)});
    REQUIRE_FALSE(pitch);
    CHECK(pitch.refusal().code == RefusalCode::out_of_range);
    CHECK(pitch.refusal().field == "speed");
    Reading fast = throw_of(1);
    fast.speed = Speed::miles_per_hour(140);
    const auto refused = measure_test(velocity_kind(), {fast});
    REQUIRE_FALSE(refused);
    CHECK(refused.refusal().sentence.find("140 mph") != std::string::npos);
}

TEST_CASE("Trials much further apart than usual are pointed at, not dropped") {
    const auto apart = measure_test(velocity_kind(), {throw_of(36, 1), throw_of(33, 2), throw_of(36, 3)});
    REQUIRE(apart);
    CHECK(apart->value == doctest::Approx(35));
    CHECK(has_warning(*apart, "was one misread"));
    const auto close = measure_test(velocity_kind(), {throw_of(36, 1), throw_of(35.5, 2), throw_of(36.4, 3)});
    REQUIRE(close);
    CHECK_FALSE(has_warning(*close, "was one misread"));
}

TEST_CASE("What is not known about a velocity is said") {
    Reading bare = reading();
    bare.speed = Speed::metres_per_second(36);
    const auto result = measure_test(velocity_kind(), {bare});
    REQUIRE(result);
    CHECK(has_warning(*result, "Where the speed was read"));
    CHECK(has_warning(*result, "radar is not named"));
    CHECK(result->method == "one throw, read by radar");
}

TEST_CASE("A ball's speed from its distance: with the angle, or as a lower bound that says so") {
    const auto known = measure_test(ball_kind(), {thrown_far(10, 30)});
    const auto least = measure_test(ball_kind(), {thrown_far(10, std::nullopt)});
    REQUIRE(known);
    REQUIRE(least);
    CHECK(known->value > least->value);
    CHECK(has_warning(*least, "least speed"));
    CHECK_FALSE(has_warning(*known, "least speed"));
    CHECK(least->standard_error == doctest::Approx(std::hypot(0.4, 0.3, 0.026 * least->value)));
    Reading no_height = thrown_far(10, 30);
    no_height.release_height.reset();
    const auto refused = measure_test(ball_kind(), {no_height});
    REQUIRE_FALSE(refused);
    CHECK(refused.refusal().field == "release_height");
}

TEST_CASE("Two ways of measuring do not make one result") {
    Reading by_radar = reading(2);
    by_radar.speed = Speed::metres_per_second(9.2);
    CHECK_FALSE(measure_test(ball_kind(), {thrown_far(10, 30), by_radar}));
    CHECK_FALSE(measure_test(ball_kind(), {thrown_far(10, 30), thrown_far(10, std::nullopt, 2)}));
    const TestKind jump = kind_of(Measure::jump_height, TestUnit::metre, 0.05, 1.2);
    Reading timed = reading(), taped = reading(2);
    timed.flight_time = Duration::seconds(0.55);
    taped.height = Length::metres(0.37);
    const auto mixed = measure_test(jump, {timed, taped});
    REQUIRE_FALSE(mixed);
    CHECK(mixed.refusal().code == RefusalCode::method_does_not_apply);
    const auto alone = measure_test(jump, {timed});
    REQUIRE(alone);
    CHECK(alone->value == doctest::Approx(9.80665 * 0.55 * 0.55 / 8));
    CHECK(alone->method == "one jump, from flight time");
}

TEST_CASE("Another ball than the test's is refused") {
    Reading other = reading();
    other.speed = Speed::metres_per_second(9);
    other.load = Mass::pounds(6);
    const auto refused = measure_test(ball_kind(), {other});
    REQUIRE_FALSE(refused);
    CHECK(refused.refusal().field == "load");
    other.load = Mass::kilograms(1.8); // a 4-lb ball as its metric label says
    CHECK(measure_test(ball_kind(), {other}));
}

TEST_CASE("Angles, forces, bodies: the mean, in the test's unit") {
    Reading first = reading(1), second = reading(2);
    first.angle = Angle::degrees(50);
    second.angle = Angle::degrees(54);
    TestKind angle = kind_of(Measure::joint_angle, TestUnit::degree, 0, 150);
    angle.trial_error = 3; // degrees
    const auto degrees = measure_test(angle, {first, second});
    REQUIRE(degrees);
    CHECK(degrees->value == doctest::Approx(52));
    CHECK(has_warning(*degrees, "Rater or tool is not named"));
    Reading body = reading();
    body.body_mass = Mass::pounds(200);
    body.height = Length::inches(72);
    body.force = Force::newtons(250);
    body.distance = Length::feet(7);
    const auto value = [&](Measure measure, TestUnit unit, double high) {
        const auto result = measure_test(kind_of(measure, unit, 0, high), {body});
        REQUIRE(result);
        return result->value;
    };
    CHECK(value(Measure::body_mass, TestUnit::kilogram, 250) == doctest::Approx(90.718474));
    CHECK(value(Measure::stature, TestUnit::metre, 2.4) == doctest::Approx(1.8288));
    CHECK(value(Measure::taped_length, TestUnit::metre, 2.4) == doctest::Approx(1.8288));
    CHECK(value(Measure::isometric_force, TestUnit::newton, 9000) == doctest::Approx(250));
    CHECK(value(Measure::bound_distance, TestUnit::metre, 5) == doctest::Approx(2.1336));
    body.power = Power::watts(4500);
    body.flight_time = Duration::seconds(0.48946378);
    body.contact_time = Duration::seconds(0.20);
    body.speed = Speed::metres_per_second(2.25);
    CHECK(value(Measure::jump_power, TestUnit::watt, 9000) == doctest::Approx(4500));
    CHECK(value(Measure::reactive_ratio, TestUnit::one, 6) == doctest::Approx(2.4473189)); // by hand
    CHECK(value(Measure::take_off_speed, TestUnit::metre_per_second, 6) == doctest::Approx(2.25));
}

TEST_CASE("Every measure asks for what it needs, by name, and for nothing it does not list") {
    for (const auto& [measure, name] : words_of<Measure>) {
        CAPTURE(name);
        const TestUnit unit = measure == Measure::ball_speed || measure == Measure::session_velocity ||
                                      measure == Measure::take_off_speed
                                  ? TestUnit::metre_per_second
                              : measure == Measure::jump_height || measure == Measure::bound_distance ||
                                      measure == Measure::stature || measure == Measure::taped_length
                                  ? TestUnit::metre
                              : measure == Measure::joint_angle     ? TestUnit::degree
                              : measure == Measure::isometric_force ? TestUnit::newton
                              : measure == Measure::jump_power      ? TestUnit::watt
                              : measure == Measure::reactive_ratio  ? TestUnit::one
                                                                    : TestUnit::kilogram;
        const auto refused = measure_test(kind_of(measure, unit, 0, 1000), {reading()});
        REQUIRE_FALSE(refused);
        CHECK(refused.refusal().code == RefusalCode::missing_field);
        const auto needed = fields_needed(measure);
        const std::string first = needed.empty() ? fields_optional(measure).front() : needed.front();
        CHECK(refused.refusal().field == first);
    }
}

TEST_CASE("Nothing read is nothing measured") {
    const auto result = measure_test(velocity_kind(), {});
    REQUIRE_FALSE(result);
    CHECK(result.refusal().code == RefusalCode::too_few_data);
}

} // namespace amentum
