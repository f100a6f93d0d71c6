// How much could be lifted once, when lighter loads were moved as fast as possible?
//
//   v = a + b L, the lifter's own line of bar speed on load, from the fastest repetition of each load
//   1RM = (minimal velocity - a) / b                                  [GarciaRamos2024]
// The line (straight_line.h): least squares of v on L; errors in both [York2004], ours; or the median of the slopes of
//   all pairs [Theil1950] [Sen1968]. Errors of one point: speed 0.04 m/s (device and effort: 0.03 to 0.05, proposal of
//   this project, no source); load 0.5 % of it (plates as marked: proposal of this project, no source).
// The interval is Fieller's [Fieller1954], with the standard deviation between people of the minimal velocity in it
//   (load_velocity_lifts.h): that part does not shrink with more loads.
// A bad repetition: with 4 loads or more, a load whose speed lies more than 3 standard errors off the line of the others,
//   while the others do lie on a line, is left out and named. Two loads that could be it: the slow one, because a
//   half-hearted repetition is too slow; two slow ones: nobody can say. With 3 loads nobody can either, and the interval
//   is widened. With 2 there is no check at all.
// Units: kg, m/s. Valid: loads 1 to 600 kg, speeds 0.05 to 3 m/s.
// Refusals: fewer than 2 different loads, loads less than 20 % of the maximum apart (too_few_data); heavier loads that
//   were not slower; the heaviest load below 70 % of the maximum found, so that the line would be drawn out further than
//   published (method_does_not_apply). Warnings: below 80 % (published lines end at 80 to 90 %), loads less than
//   40 % apart, two loads, a line that is not straight.
// What it cannot tell: whether each repetition was meant as fast as possible; the lifter's own minimal velocity. R^2 is
//   high whatever happens when a line has three points, and proves nothing.
// Example: 60, 90, 120, 140 kg at 0.95, 0.74, 0.52, 0.38 m/s, minimal velocity 0.25: 158.1 kg
#pragma once

#include "measurement/load_velocity_lifts.h"
#include "measurement/straight_line.h"
#include "values/kit.h"

#include <optional>
#include <string>
#include <vector>

namespace amentum {

inline constexpr double speed_error_of_a_repetition = 0.04; // m/s
inline constexpr double load_error_as_fraction = 0.005;
inline constexpr double least_share_of_max = 0.70, published_share_of_max = 0.80;
inline constexpr double least_spread_of_max = 0.20, wanted_spread_of_max = 0.40;

struct LoadedRepetition {
    Mass load;
    Speed speed;
};

enum class LineFit { least_squares, both_errors, median_slope };
template <>
inline constexpr std::array<std::pair<LineFit, std::string_view>, 3> words_of<LineFit>{
    {{LineFit::least_squares, "least_squares"},
     {LineFit::both_errors, "both_errors"},
     {LineFit::median_slope, "median_slope"}}};

struct LoadVelocityGiven {
    std::vector<LoadedRepetition> repetitions;
    Speed minimal_velocity;
    double between_people; // standard deviation of it, m/s
    LineFit fit = LineFit::both_errors;
    double speed_error = speed_error_of_a_repetition;
    double load_error = load_error_as_fraction;
    MassUnit said_in = MassUnit::kg; // of warnings and refusals
};

struct LoadOnLine {
    Mass load;
    Speed speed;   // of its fastest repetition
    double fitted; // m/s
    double off_by; // standard errors from the line of the other loads; 0 with 2 loads
    bool used;     // false: the bad repetition
};

struct LoadVelocityLine {
    std::vector<LoadOnLine> loads; // lightest first
    StraightLine line;             // m/s on kg, errors widened by the misfit
    Mass one_rep_max;
    double standard_error; // kg, delta method
    Interval band;         // kg, 80 %, Fieller
    double heaviest_share; // of the maximum
    double r_squared;      // reported because it is asked for; no proof
    std::vector<std::string> warnings;
};

Result<LoadVelocityLine> estimate_load_velocity(const LoadVelocityGiven& given);

// Speed of the line at a load with its 80 % band, m/s.
Estimate line_speed_at(const LoadVelocityLine& line, Mass load);

} // namespace amentum
