// Lines through points with errors, where the answer is known: by formula, or by trying every slope.
#include "inference/random_stream.h"
#include "measurement/ball_flight_drag.h"
#include "measurement/ball_mass_line.h"
#include "measurement/load_velocity.h"
#include "measurement/straight_line.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

std::vector<LinePoint> random_points(RandomStream& stream, int n) {
    std::vector<LinePoint> points;
    const double slope = 2 * stream.next_normal();
    for (int i = 0; i < n; ++i) {
        const double sx = 0.05 + 0.3 * stream.next_uniform(), sy = 0.05 + 0.5 * stream.next_uniform();
        points.push_back({i + sx * stream.next_normal(), 3 + slope * i + sy * stream.next_normal(), sx, sy});
    }
    return points;
}

// The misfit of the best line of a given slope: weights first, then the best intercept.
double least_misfit(const std::vector<LinePoint>& points, double slope) {
    double weights = 0, sum = 0, misfit = 0;
    for (const auto& p : points) {
        const double w = 1 / (p.y_error * p.y_error + slope * slope * p.x_error * p.x_error);
        weights += w;
        sum += w * (p.y - slope * p.x);
    }
    for (const auto& p : points)
        misfit += std::pow(p.y - sum / weights - slope * p.x, 2) /
                  (p.y_error * p.y_error + slope * slope * p.x_error * p.x_error);
    return misfit;
}

} // namespace

TEST_CASE("Errors in both: no slope near or far fits better (every slope of a fine grid is tried)") {
    RandomStream stream(11);
    for (int i = 0; i < 60; ++i) {
        const auto points = random_points(stream, 3 + i % 6);
        const auto line = fit_errors_in_both(points);
        REQUIRE(line);
        CHECK(std::abs(line->misfit - least_misfit(points, line->slope)) <= 1e-9 * (1 + line->misfit));
        for (int k = -4000; k <= 4000; ++k)
            CHECK_GE(least_misfit(points, line->slope + 0.001 * k) - line->misfit,
                     -1e-9 * (1 + line->misfit));
    }
}

TEST_CASE("Equal errors in both: the principal axis of the points, by its closed form") {
    RandomStream stream(12);
    for (int i = 0; i < 40; ++i) {
        auto points = random_points(stream, 8);
        double mx = 0, my = 0, xx = 0, yy = 0, xy = 0;
        for (auto& p : points) {
            p.x_error = p.y_error = 0.2;
            mx += p.x / 8;
            my += p.y / 8;
        }
        for (const auto& p : points) {
            xx += (p.x - mx) * (p.x - mx);
            yy += (p.y - my) * (p.y - my);
            xy += (p.x - mx) * (p.y - my);
        }
        const auto line = fit_errors_in_both(points);
        REQUIRE(line);
        const double axis = (yy - xx + std::sqrt((yy - xx) * (yy - xx) + 4 * xy * xy)) / (2 * xy);
        CHECK(std::abs(line->slope / axis - 1) <= 1e-9);
    }
}

TEST_CASE(
    "Exact x: errors in both is weighted least squares, and the median slope is the slope of exact points") {
    std::vector<LinePoint> points{{0, 1, 0, 0.1}, {1, 3.2, 0, 0.2}, {2, 4.9, 0, 0.1}, {4, 9.1, 0, 0.3}};
    const auto both = fit_errors_in_both(points), squares = fit_errors_in_y(points);
    REQUIRE(both);
    REQUIRE(squares);
    CHECK(std::abs(both->slope - squares->slope) <= 1e-14);
    CHECK(std::abs(both->slope_variance - squares->slope_variance) <= 1e-15);
    for (auto& p : points)
        p.y = 2 - 0.5 * p.x;
    points[2].y = 40; // one wild point of four
    const auto median = fit_median_slope(points);
    REQUIRE(median);
    CHECK(median->slope != doctest::Approx(squares->slope));
    points[2].y = 1;
    const auto exact = fit_median_slope(points);
    REQUIRE(exact);
    CHECK(std::abs(exact->slope + 0.5) <= 1e-15);
    CHECK(std::abs(exact->intercept - 2) <= 1e-15);
}

TEST_CASE(
    "A crossing: with an exact line the band is the error of y over the slope; its ends solve the equation") {
    const StraightLine exact{2, -0.5, 0, 0, 0, 0, 1};
    const auto simple = estimate_crossing(exact, 1, 0.1, 1.5);
    REQUIRE(simple);
    CHECK(std::abs(simple->x - 2) <= 1e-12);
    CHECK(std::abs(simple->standard_error - 0.2) <= 1e-12);
    CHECK(std::abs(simple->band.low - 1.7) <= 1e-12);
    CHECK(std::abs(simple->band.high - 2.3) <= 1e-12);
    const StraightLine doubtful{2, -0.5, 0.01, 0.004, -0.005, 0, 3};
    const auto band = estimate_crossing(doubtful, 1, 0.1);
    REQUIRE(band);
    for (const double end : {band->band.low, band->band.high})
        CHECK(std::abs(std::abs(doubtful.at(end) - 1) / std::sqrt(doubtful.variance_at(end) + 0.01) - z80) <=
              1e-9);
    CHECK(band->band.low < band->x);
    CHECK(band->x < band->band.high);
    const auto level = estimate_crossing({2, -0.05, 0.01, 0.004, -0.005, 0, 3}, 1, 0.1);
    REQUIRE_FALSE(level);
    CHECK(level.refusal().code == RefusalCode::too_few_data);
}

TEST_CASE("What the day shares moves the level's error and not the slope's, by hand") {
    const std::vector<ThrowsOfBall> balls{
        {Mass::kilograms(1), std::vector<Speed>(4, Speed::metres_per_second(12))},
        {Mass::kilograms(2), std::vector<Speed>(4, Speed::metres_per_second(10))},
        {Mass::kilograms(4), std::vector<Speed>(4, Speed::metres_per_second(8))}};
    const auto alone = estimate_ball_mass_line(balls, 0.04, 0),
               shared = estimate_ball_mass_line(balls, 0.04, 0.03);
    REQUIRE(alone);
    REQUIRE(shared);
    // Points at -ln 2, 0, ln 2, each 0.04 / 2: slope error 0.02 / (ln 2 sqrt 2), level error 0.02 / sqrt 3; the misfit,
    // (2 d)^2 / 6 / 0.02^2 with d = ln(10 / sqrt(96)), is 0.7 of 1 and widens nothing.
    CHECK(alone->slope.standard_error == doctest::Approx(0.02 / (std::log(2.0) * std::sqrt(2.0))));
    CHECK(shared->slope.standard_error == alone->slope.standard_error);
    CHECK(shared->slope.value == doctest::Approx(std::log(8.0 / 12) / std::log(4.0)));
    CHECK(alone->level.standard_error / alone->level.value == doctest::Approx(0.02 / std::sqrt(3.0)));
    CHECK(shared->level.standard_error / shared->level.value ==
          doctest::Approx(std::hypot(0.02 / std::sqrt(3.0), 0.03)));
    CHECK(shared->balls[1].energy.value == doctest::Approx(100));
    CHECK(shared->balls[1].momentum.value == doctest::Approx(20));
}

TEST_CASE("Drag: a heavier ball needs less correction, and D / (3 L) of it for a short flat throw") {
    // Level release at v, to first order in 1 / L: x = v t - v^2 t^2 / (2 L), fall = g t^2 / 2 - g v t^3 / (6 L). Drag
    // slows the fall as well, t = t0 (1 + v t0 / (6 L)), so the ball lands at D = v t0 (1 - v t0 / (3 L)).
    const double d = 0.2, kg = 5, decay = 2 * kg / (1.20 * 0.5 * std::acos(-1.0) * d * d / 4);
    const BallThrow flat{Length::metres(4), Length::metres(0.05)};
    const auto drag =
        estimate_drag_correction(flat, Angle::degrees(0), Mass::kilograms(kg), Length::metres(d));
    REQUIRE(drag);
    CHECK(std::abs(drag->value / (4 / (3 * decay)) - 1) < 0.03);
    double before = 1;
    for (const double mass : {1.0, 2.0, 3.0, 5.0}) {
        const auto less =
            estimate_drag_correction({Length::metres(12), Length::metres(1.8)}, Angle::degrees(38),
                                     Mass::kilograms(mass), usual_diameter(Mass::kilograms(mass)));
        REQUIRE(less);
        CHECK(less->value < before);
        CHECK(less->value > 0);
        before = less->value;
    }
}

} // namespace amentum
