// Lines through points with errors, and a heavy ball's flight, against R 4.2.2 by the recipe lines.R beside this file:
// minimisation, lm, uniroot and small steps, which share nothing with the engine's ways. When Rscript is installed the
// recipe is run again and every number it prints is compared.
#include "answers_of_r.h"
#include "measurement/ball_flight_drag.h"
#include "measurement/ball_mass_line.h"
#include "measurement/load_velocity.h"

#include <doctest/doctest.h>

#include <cmath>
#include <map>
#include <string>

using namespace amentum;

namespace {

// What lines.R printed, and how closely it must be met.
struct Printed {
    double value, tolerance;
};
const std::map<std::string, Printed> printed{
    {"both_slope", {-0.48053340751159, 1e-9}},
    {"both_intercept", {5.4799102243525, 1e-8}},
    {"both_misfit", {11.866353194061, 1e-9}},
    {"balls_slope", {-0.32241384745286, 1e-12}},
    {"balls_slope_error", {0.03516982048726, 1e-12}},
    {"balls_level", {10.722497977179, 1e-9}},
    {"balls_level_error", {0.28880698560307, 1e-9}},
    {"unequal_slope", {-0.32236962925127, 1e-12}},
    {"unequal_slope_error", {0.028824880747382, 1e-12}},
    {"loads_slope", {-0.0071496598639456, 1e-12}},
    {"loads_max", {158.09705042816, 1e-8}},
    {"loads_r_squared", {0.9999058572198, 1e-10}},
    {"loads_low", {147.09721256895, 1e-6}},
    {"loads_high", {170.67436775104, 1e-6}},
    {"loads_median_slope", {-0.0071458333333333, 1e-12}},
    {"loads_median_max", {158.07580174927, 1e-8}},
    {"lands_1kg", {14.988380076446, 1e-4}},
    {"lands_4kg", {15.821041116863, 1e-4}},
};

void add_pearson(std::map<std::string, double>& out) {
    const double x[] = {0.0, 0.9, 1.8, 2.6, 3.3, 4.4, 5.2, 6.1, 6.5, 7.4},
                 y[] = {5.9, 5.4, 4.4, 4.6, 3.5, 3.7, 2.8, 2.8, 2.4, 1.5},
                 wx[] = {1000, 1000, 500, 800, 200, 80, 60, 20, 1.8, 1.0},
                 wy[] = {1, 1.8, 4, 8, 20, 20, 70, 70, 100, 500};
    std::vector<LinePoint> points;
    for (std::size_t i = 0; i < 10; ++i)
        points.push_back({x[i], y[i], 1 / std::sqrt(wx[i]), 1 / std::sqrt(wy[i])});
    const auto line = fit_errors_in_both(points);
    REQUIRE(line);
    out["both_slope"] = line->slope;
    out["both_intercept"] = line->intercept;
    out["both_misfit"] = line->misfit;
}

BallMassLine balls_thrown(std::size_t four, std::size_t six, std::size_t eight) {
    const auto speeds = [](double v, std::size_t n) {
        return std::vector<Speed>(n, Speed::metres_per_second(v));
    };
    const auto line = estimate_ball_mass_line({{Mass::pounds(6), speeds(10.5, six)},
                                               {Mass::pounds(4), speeds(12.0, four)},
                                               {Mass::pounds(8), speeds(9.6, eight)}},
                                              0.03, 0.025);
    REQUIRE(line);
    return *line;
}

LoadVelocityLine loads_lifted(LineFit fit) {
    LoadVelocityGiven given{{}, Speed::metres_per_second(0.25), 0.05, fit, 0.04, 0};
    const double loads[] = {60, 90, 120, 140}, speeds[] = {0.95, 0.74, 0.52, 0.38};
    for (std::size_t i = 0; i < 4; ++i)
        given.repetitions.push_back({Mass::kilograms(loads[i]), Speed::metres_per_second(speeds[i])});
    const auto line = estimate_load_velocity(given);
    REQUIRE(line);
    return *line;
}

// Where a ball released with 12 m/s lands: the distance at which the corrected speed is 12 m/s.
double landing(double kg, double metres) {
    double low = 10, high = 17;
    for (int i = 0; i < 50; ++i) {
        const double middle = 0.5 * (low + high);
        const BallThrow thrown{Length::metres(middle), Length::metres(1.8)};
        const auto bare = ball_speed_from_distance(thrown, Angle::degrees(40));
        const auto drag =
            estimate_drag_correction(thrown, Angle::degrees(40), Mass::kilograms(kg), Length::metres(metres));
        REQUIRE(bare);
        REQUIRE(drag);
        (bare->speed.metres_per_second() * std::exp(drag->value) < 12 ? low : high) = middle;
    }
    return high;
}

std::map<std::string, double> engine_answers() {
    std::map<std::string, double> out;
    add_pearson(out);
    const auto balls = balls_thrown(3, 3, 3), unequal = balls_thrown(5, 2, 4);
    out["balls_slope"] = balls.slope.value;
    out["balls_slope_error"] = balls.slope.standard_error;
    out["balls_level"] = balls.level.value;
    out["balls_level_error"] = balls.level.standard_error;
    out["unequal_slope"] = unequal.slope.value;
    out["unequal_slope_error"] = unequal.slope.standard_error;
    const auto squares = loads_lifted(LineFit::least_squares), median = loads_lifted(LineFit::median_slope);
    out["loads_slope"] = squares.line.slope;
    out["loads_max"] = squares.one_rep_max.kilograms();
    out["loads_r_squared"] = squares.r_squared;
    out["loads_low"] = squares.band.low;
    out["loads_high"] = squares.band.high;
    out["loads_median_slope"] = median.line.slope;
    out["loads_median_max"] = median.one_rep_max.kilograms();
    out["lands_1kg"] = landing(1, 0.19);
    out["lands_4kg"] = landing(4, 0.23);
    return out;
}

} // namespace

TEST_CASE("Lines and flights are R's") {
    const auto ours = engine_answers();
    REQUIRE(ours.size() == printed.size());
    for (const auto& [name, r] : printed) {
        CAPTURE(name);
        CAPTURE(ours.at(name));
        CHECK(std::abs(ours.at(name) - r.value) <= r.tolerance);
    }
}

TEST_CASE("R is asked again when it is installed") {
    const auto r = answers_of_r("lines.R");
    if (r.empty()) {
        MESSAGE("SKIPPED: Rscript is not installed; the listed values above were checked, R itself was not "
                "asked.");
        return;
    }
    CHECK(r.size() == printed.size());
    const auto ours = engine_answers();
    for (const auto& [name, value] : r) {
        CAPTURE(name);
        CAPTURE(value);
        REQUIRE(printed.contains(name));
        CHECK(std::abs(ours.at(name) - value) <= printed.at(name).tolerance);
    }
}
