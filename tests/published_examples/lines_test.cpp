// Lines of bar speed on load and of ball speed on mass, and the published equations of speed.
//
// York D and others, Am J Phys 72:367-375, 2004, table of Pearson's data with York's weights: values from memory, and
// tests/independent_program/lines.R finds them by minimisation. The load example is this project's; its numbers were
// recomputed by hand and by R.
#include "measurement/ball_flight_drag.h"
#include "measurement/ball_mass_line.h"
#include "measurement/load_velocity.h"

#include <doctest/doctest.h>

#include <cmath>

namespace amentum {
namespace {

void check_near(double got, double expected, double tolerance) {
    CAPTURE(got);
    CAPTURE(expected);
    CHECK(std::abs(got - expected) <= tolerance);
}

Speed speed(double v) {
    return Speed::metres_per_second(v);
}

Result<LoadVelocityLine> line_of(std::vector<LoadedRepetition> repetitions, LineFit fit) {
    return estimate_load_velocity({std::move(repetitions), speed(0.25), 0.05, fit});
}

} // namespace

TEST_CASE("York et al. 2004: Pearson's data with York's weights, with the standard errors (from memory)") {
    const double x[] = {0.0, 0.9, 1.8, 2.6, 3.3, 4.4, 5.2, 6.1, 6.5, 7.4},
                 y[] = {5.9, 5.4, 4.4, 4.6, 3.5, 3.7, 2.8, 2.8, 2.4, 1.5},
                 wx[] = {1000, 1000, 500, 800, 200, 80, 60, 20, 1.8, 1.0},
                 wy[] = {1, 1.8, 4, 8, 20, 20, 70, 70, 100, 500};
    std::vector<LinePoint> points;
    for (std::size_t i = 0; i < 10; ++i)
        points.push_back({x[i], y[i], 1 / std::sqrt(wx[i]), 1 / std::sqrt(wy[i])});
    const auto line = fit_errors_in_both(points);
    REQUIRE(line);
    check_near(line->slope, -0.4805334074, 1e-8);
    check_near(line->intercept, 5.4799102240, 1e-8);
    check_near(std::sqrt(line->slope_variance), 0.0579850, 1e-7);
    check_near(std::sqrt(line->intercept_variance), 0.2949707, 1e-7);
    check_near(line->misfit, 11.8664, 1e-4);
    CHECK_FALSE(misfit_is_unusual(*line)); // 11.87 of 8: below the 99th percentile, 20.09
}

TEST_CASE("60, 90, 120, 140 kg at 0.95, 0.74, 0.52, 0.38 m/s: 158.0971 kg at 0.25 m/s, recomputed") {
    const std::vector<LoadedRepetition> four{{Mass::kilograms(60), speed(0.95)},
                                             {Mass::kilograms(90), speed(0.74)},
                                             {Mass::kilograms(120), speed(0.52)},
                                             {Mass::kilograms(140), speed(0.38)}};
    const auto squares = line_of(four, LineFit::least_squares);
    REQUIRE(squares);
    check_near(squares->one_rep_max.kilograms(), 158.0971, 1e-4);
    check_near(squares->line.slope, -0.00714966, 1e-8);
    check_near(squares->line.intercept, 1.380340, 1e-6);
    check_near(squares->r_squared, 0.999906, 1e-6);
    // least squares of speed on load and of load on speed (158.0918) enclose errors in both, up to the weights
    const auto both = line_of(four, LineFit::both_errors);
    REQUIRE(both);
    CHECK(both->one_rep_max.kilograms() > 158.05);
    CHECK(both->one_rep_max.kilograms() < 158.12);
    const auto two = line_of({four.front(), four.back()}, LineFit::both_errors);
    REQUIRE(two);
    check_near(two->one_rep_max.kilograms(), 158.2456, 1e-4);
}

TEST_CASE("General equations (coefficients from memory) at single speeds, recomputed") {
    const auto percent = [](SpeedLift lift, double v) {
        const auto p = percent_of_max(lift, speed(v));
        REQUIRE(p);
        return p->value;
    };
    check_near(percent(SpeedLift::bench_press, 0.62), 70.00, 0.005);
    check_near(percent(SpeedLift::bench_press, 0.50), 77.69, 0.005);
    check_near(percent(SpeedLift::bench_press, 1.00), 47.26, 0.005);
    check_near(percent(SpeedLift::back_squat, 0.32), 100.16, 0.005);
    check_near(percent(SpeedLift::back_squat, 0.70), 78.58, 0.005);
    check_near(percent(SpeedLift::back_squat, 1.00), 60.33, 0.005);
    check_near(percent(SpeedLift::bench_pull, 1.00), 62.34, 0.005);
}

TEST_CASE("Beckham et al., JSCR 32:1831-1837, 2018: pull-ups when the first goes up at 0.60 m/s") {
    const auto reps = pull_up_repetitions(speed(0.60));
    REQUIRE(reps);
    check_near(reps->value, 8.673, 1e-3); // -6.661 + 25.556 x 0.60
}

TEST_CASE("Cross, Am J Phys 72:305, 2004: 60 times the mass, 2.4 times less speed") {
    check_near(slope_of_light_balls, -0.2138, 1e-4);
    std::vector<ThrowsOfBall> balls;
    for (const double kg : {0.25, 1.0, 4.0})
        balls.push_back({Mass::kilograms(kg), {2, speed(12 * std::pow(kg, -0.2138))}});
    const auto line = estimate_ball_mass_line(balls, 0.03, 0.025);
    REQUIRE(line);
    check_near(line->slope.value, -0.2138, 1e-12);
    CHECK(line->goes_with == SlopeGoesWith::limb_speed);
}

TEST_CASE(
    "Drag on heavy balls at 12 m/s, 40 degrees, 1.8 m: distances recomputed with C_d 0.5, 1.20 kg/m^3") {
    struct Row {
        double kg, diameter, distance, seems; // seems: the speed that the distance says without drag
    };
    for (const auto& row : {Row{1, 0.19, 14.98, 11.43},
                            {2, 0.20, 15.56, 11.67},
                            {3, 0.22, 15.70, 11.73},
                            {4, 0.23, 15.82, 11.78}}) {
        CAPTURE(row.kg);
        const BallThrow thrown{Length::metres(row.distance), Length::metres(1.8)};
        const auto bare = ball_speed_from_distance(thrown, Angle::degrees(40));
        const auto drag = estimate_drag_correction(thrown, Angle::degrees(40), Mass::kilograms(row.kg),
                                                   Length::metres(row.diameter));
        REQUIRE(bare);
        REQUIRE(drag);
        check_near(bare->speed.metres_per_second(), row.seems, 0.01);
        check_near(bare->speed.metres_per_second() * std::exp(drag->value), 12, 0.01);
    }
}

} // namespace amentum
