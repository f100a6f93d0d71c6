// What lines over ball masses and over bar loads refuse, warn of, and leave out.
#include "measurement/ball_flight_drag.h"
#include "measurement/ball_mass_line.h"
#include "measurement/load_velocity.h"

#include <doctest/doctest.h>

#include <cmath>

namespace amentum {
namespace {

Speed speed(double v) {
    return Speed::metres_per_second(v);
}

ThrowsOfBall ball(double pounds, std::vector<double> speeds) {
    ThrowsOfBall thrown{Mass::pounds(pounds), {}};
    for (const double v : speeds)
        thrown.speeds.push_back(speed(v));
    return thrown;
}

Result<BallMassLine> line_of(const std::vector<ThrowsOfBall>& balls) {
    return estimate_ball_mass_line(balls, 0.03, 0.025);
}

LoadVelocityGiven lifts(const std::vector<std::pair<double, double>>& loads) {
    LoadVelocityGiven given{{}, speed(0.25), 0.05};
    for (const auto& [kg, v] : loads)
        given.repetitions.push_back({Mass::kilograms(kg), speed(v)});
    return given;
}

bool says(const std::vector<std::string>& warnings, const std::string& part) {
    for (const auto& each : warnings)
        if (each.find(part) != std::string::npos)
            return true;
    return false;
}

bool contains(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
}

} // namespace

TEST_CASE("Too few balls, or one throw of a ball: refused, with what to throw next") {
    const auto two = line_of({ball(4, {12, 12.1}), ball(6, {10.4, 10.6})});
    REQUIRE_FALSE(two);
    CHECK(two.refusal().code == RefusalCode::too_few_data);
    CHECK(contains(two.refusal().sentence, "Throw these next"));
    CHECK(contains(two.refusal().sentence, "a ball of 8 lb"));
    CHECK_FALSE(contains(two.refusal().sentence, "a ball of 4 lb"));
    const auto single = line_of({ball(4, {12, 12.1}), ball(6, {10.4}), ball(8, {9.5, 9.6})});
    REQUIRE_FALSE(single);
    CHECK(contains(single.refusal().sentence, "Throw the 6 lb ball once more"));
    const auto none = line_of({});
    REQUIRE_FALSE(none);
    CHECK(contains(none.refusal().sentence, "a ball of 4 lb and a ball of 6 lb and a ball of 8 lb"));
}

TEST_CASE("The line is read inside the masses thrown, and refused beyond") {
    const auto line = line_of({ball(4, {12, 12}), ball(6, {10.5, 10.5}), ball(8, {9.6, 9.6})});
    REQUIRE(line);
    CHECK(speed_at(*line, Mass::pounds(4)));
    CHECK(speed_at(*line, Mass::pounds(8)));
    const auto beyond = speed_at(*line, Mass::pounds(10));
    REQUIRE_FALSE(beyond);
    CHECK(beyond.refusal().code == RefusalCode::method_does_not_apply);
    CHECK_FALSE(speed_at(*line, Mass::pounds(2)));
    const auto five = speed_at(*line, Mass::pounds(5));
    REQUIRE(five);
    CHECK(five->speed.value > 10.5);
    CHECK(five->speed.value < 12);
    CHECK(five->band.low < five->speed.value);
    CHECK(line->balls[0].of_lightest == doctest::Approx(1));
    CHECK(line->balls[2].of_lightest == doctest::Approx(0.8));
}

TEST_CASE("Above 8 lb: a caution, and outside the working range") {
    const auto line = line_of({ball(4, {12, 12}), ball(8, {9.6, 9.6}), ball(10, {8.9, 8.9})});
    REQUIRE(line);
    CHECK(says(line->warnings, "Caution: the 10 lb ball"));
    CHECK_FALSE(says(line->warnings, "the 8 lb ball is heavier"));
    CHECK(line->balls[0].in_working_range);
    CHECK_FALSE(line->balls[1].in_working_range);
    CHECK_FALSE(line->balls[1].above_advised);
    CHECK(line->balls[2].above_advised);
    CHECK(contains(describe_working_masses(), "common practice, no source"));
}

TEST_CASE("What the slope goes with is said only when its interval holds one of the two and not the other") {
    const auto thrown = [](double slope, std::size_t throws) {
        std::vector<ThrowsOfBall> balls;
        for (const double pounds : {4.0, 6.0, 8.0})
            balls.push_back(
                {Mass::pounds(pounds), std::vector<Speed>(throws, speed(12 * std::pow(pounds / 4, slope)))});
        const auto line = line_of(balls);
        REQUIRE(line);
        return line->goes_with;
    };
    CHECK(thrown(-0.50, 3) == SlopeGoesWith::strength);
    CHECK(thrown(-0.60, 3) == SlopeGoesWith::strength);
    CHECK(thrown(-0.21, 3) == SlopeGoesWith::limb_speed);
    CHECK(thrown(-0.10, 3) == SlopeGoesWith::limb_speed);
    CHECK(thrown(-0.35, 3) == SlopeGoesWith::cannot_tell); // between the two, clear of both
}

TEST_CASE(
    "Throws further apart than the test's error are believed; a bent line widens the errors and says so") {
    const auto calm = line_of({ball(4, {12, 12, 12}), ball(6, {10.5, 10.5, 10.5}), ball(8, {9.6, 9.6, 9.6})});
    const auto wild = line_of({ball(4, {11, 12, 13}), ball(6, {9.5, 10.5, 11.5}), ball(8, {8.6, 9.6, 10.6})});
    REQUIRE(calm);
    REQUIRE(wild);
    CHECK_FALSE(calm->trial_error_from_throws);
    CHECK(wild->trial_error_from_throws);
    CHECK(wild->trial_error == doctest::Approx(0.0946).epsilon(0.01)); // 1/12, 1/10.5, 1/9.6 pooled, by hand
    CHECK(wild->slope.standard_error > 2.5 * calm->slope.standard_error);
    CHECK(says(wild->warnings, "further apart than is usual"));
    const auto bent = line_of({ball(4, {12, 12, 12}), ball(6, {9.2, 9.2, 9.2}), ball(8, {9.6, 9.6, 9.6})});
    REQUIRE(bent);
    CHECK_FALSE(bent->straight);
    CHECK(says(bent->warnings, "miss the straight line"));
    CHECK(bent->slope.standard_error > calm->slope.standard_error);
}

TEST_CASE("A speed by distance is corrected for drag, and the slope without it is told") {
    std::vector<ThrowsOfBall> balls{ball(4, {11.5, 11.5}), ball(6, {10.2, 10.2}), ball(8, {9.4, 9.4})};
    const auto bare = line_of(balls);
    for (auto& each : balls) {
        each.drag = 0.05 / each.mass.kilograms(); // about 2.8 % for 4 lb, 1.4 % for 8 lb
        each.drag_error = 0.28 * each.drag;
    }
    const auto corrected = line_of(balls);
    REQUIRE(bare);
    REQUIRE(corrected);
    CHECK(corrected->slope_without_drag == doctest::Approx(bare->slope.value));
    CHECK(corrected->slope.value < bare->slope.value - 0.015); // 1.4 % over ln 2
    CHECK(corrected->slope.standard_error > bare->slope.standard_error);
    CHECK(says(corrected->warnings, "without it the slope would read"));
}

TEST_CASE("Loads: too few, too close, not slower, drawn out too far") {
    const auto code = [](const std::vector<std::pair<double, double>>& loads) {
        const auto line = estimate_load_velocity(lifts(loads));
        REQUIRE_FALSE(line);
        return line.refusal().code;
    };
    CHECK(code({}) == RefusalCode::too_few_data);
    CHECK(code({{100, 0.6}, {100, 0.62}}) == RefusalCode::too_few_data);         // one load twice
    CHECK(code({{130, 0.40}, {140, 0.30}}) == RefusalCode::too_few_data);        // slope not known
    CHECK(code({{100, 0.5}, {120, 0.6}}) == RefusalCode::method_does_not_apply); // faster when heavier
    CHECK(code({{60, 0.95}, {90, 0.74}}) == RefusalCode::method_does_not_apply); // 57 % of 158 kg
    CHECK(code({{60, 9.5}, {90, 0.74}}) == RefusalCode::out_of_range);
    CHECK(code({{900, 0.9}, {90, 0.74}}) == RefusalCode::out_of_range);
}

TEST_CASE("The fastest repetition of each load counts; few, close or light loads are warned of") {
    const auto line = estimate_load_velocity(
        lifts({{60, 0.90}, {60, 0.95}, {90, 0.74}, {120, 0.52}, {120, 0.45}, {140, 0.38}}));
    REQUIRE(line);
    REQUIRE(line->loads.size() == 4);
    CHECK(line->loads[0].speed == speed(0.95));
    CHECK(line->warnings.empty());
    CHECK(line->heaviest_share == doctest::Approx(140 / 158.1).epsilon(0.001));
    const auto two = estimate_load_velocity(lifts({{60, 0.95}, {140, 0.38}}));
    REQUIRE(two);
    CHECK(says(two->warnings, "Two loads always lie on a line"));
    const auto light = estimate_load_velocity(lifts({{50, 1.02}, {90, 0.74}, {118, 0.54}}));
    REQUIRE(light);
    CHECK(says(light->warnings, "drawn out further"));
    const auto grinder = estimate_load_velocity(lifts({{60, 0.95}, {100, 0.62}, {150, 0.20}}));
    REQUIRE(grinder);
    CHECK(says(grinder->warnings, "grinds slower"));
}

TEST_CASE("One slow repetition of four is named and left out; of three it cannot be") {
    const auto line = estimate_load_velocity(lifts({{60, 0.95}, {90, 0.48}, {120, 0.52}, {140, 0.38}}));
    REQUIRE(line);
    CHECK_FALSE(line->loads[1].used);
    CHECK(line->one_rep_max.kilograms() == doctest::Approx(158.2).epsilon(0.002));
    CHECK(says(line->warnings, "90 kg is out of line: it was 0.26 m/s slower"));
    const auto three = estimate_load_velocity(lifts({{60, 0.95}, {100, 0.40}, {140, 0.38}}));
    REQUIRE(three);
    for (const auto& each : three->loads)
        CHECK(each.used);
    CHECK(says(three->warnings, "which one is off cannot be said"));
    const auto good = estimate_load_velocity(lifts({{60, 0.95}, {100, 0.67}, {140, 0.38}}));
    REQUIRE(good);
    CHECK(three->standard_error > good->standard_error);
}

TEST_CASE("The minimal velocity's spread between people is in the interval") {
    auto given = lifts({{60, 0.95}, {90, 0.74}, {120, 0.52}, {140, 0.38}});
    const auto with = estimate_load_velocity(given);
    given.between_people = 0;
    const auto without = estimate_load_velocity(given);
    REQUIRE(with);
    REQUIRE(without);
    // 0.05 m/s over the slope, 0.00715 m/s/kg, is 7.0 kg, in quadrature
    CHECK(std::sqrt(std::pow(with->standard_error, 2) - std::pow(without->standard_error, 2)) ==
          doctest::Approx(0.05 / 0.00715).epsilon(0.005));
}

TEST_CASE("Every lift has its minimal velocity, and what is from memory says so") {
    for (const auto& name : all_words<SpeedLift>()) {
        const auto& row = minimal_velocity(*from_word<SpeedLift>(name));
        CAPTURE(name);
        CHECK(row.speed.metres_per_second() >= 0.15);
        CHECK(row.between_people > 0);
        CHECK_FALSE(row.sources.empty());
        CHECK(contains(describe_minimal_velocity(row), "from memory") == row.from_memory);
    }
    CHECK_FALSE(percent_of_max(SpeedLift::hex_bar_deadlift, speed(0.5)));
    CHECK_FALSE(percent_of_max(SpeedLift::bench_press, speed(2.5)));
    CHECK_FALSE(pull_up_repetitions(speed(0.2)));
    const auto loss = velocity_loss({speed(0.60), speed(0.57), speed(0.48)});
    REQUIRE(loss);
    CHECK(*loss == doctest::Approx(0.2));
    CHECK_FALSE(velocity_loss({speed(0.6)}));
}

TEST_CASE("Drag is refused where ball sizes are not known") {
    const BallThrow thrown{Length::metres(10), Length::metres(1.8)};
    CHECK_FALSE(
        estimate_drag_correction(thrown, Angle::degrees(40), Mass::kilograms(0.2), Length::metres(0.1)));
    CHECK_FALSE(
        estimate_drag_correction(thrown, Angle::degrees(40), Mass::kilograms(2), Length::metres(0.9)));
    CHECK(usual_diameter(Mass::kilograms(1)).metres() == doctest::Approx(0.189));
    // 45 degrees less half the angle under which the throw is seen: 10 m from 1.8 m, 39.9 degrees
    CHECK(best_release_angle(thrown).degrees() == doctest::Approx(39.9).epsilon(0.001));
}

} // namespace amentum
