// Which straight line runs through points whose errors are stated?
//
//   y = a + b x, each point with the standard deviations of its own x and y
//   fit_errors_in_y     weighted least squares, weights 1 / sy^2; x taken as exact
//   fit_errors_in_both  b at the minimum of  S = sum (y - a - b x)^2 / (sy^2 + b^2 sx^2)   [York2004]
//                       by his iteration: W = 1 / (sy^2 + b^2 sx^2), U = x - mean x, V = y - mean y (means weighted
//                       by W), beta = W (U sy^2 + b V sx^2), b = sum W beta V / sum W beta U
//                       Least squares of y on x lays the line too flat when x has an error; this does not.
//   fit_median_slope    b the median of the slopes of all pairs, a the median of y - b x  [Theil1950] [Sen1968]:
//                       one bad point of four, two of seven, hardly move it
// Variances of a and b are those that the stated errors give [York2004]; for the median slope those of
// fit_errors_in_both are taken, which are too small for it by up to a tenth (from memory).
// misfit is S at the line; about n - 2 when the points lie on a line as well as their errors allow.
// Units: any. Valid: 2 points or more of 2 different x; sy above 0, sx from 0 (asserted). Refusals: one x
//   (too_few_data).
// What it cannot tell: whether the truth is straight; with two points nothing can.
// Example: Pearson's ten points with York's weights: a 5.4799, b -0.48053
#pragma once

#include "values/interval.h"
#include "values/refusal.h"

#include <vector>

namespace amentum {

struct LinePoint {
    double x;
    double y;
    double x_error; // standard deviation; 0: exact
    double y_error;
};

struct StraightLine {
    double intercept;
    double slope;
    double intercept_variance;
    double slope_variance;
    double covariance; // of the two
    double misfit;     // S, chi-squared of `freedom`
    int freedom;       // n - 2

    double at(double x) const { return intercept + slope * x; }
    double variance_at(double x) const {
        return intercept_variance + 2 * x * covariance + x * x * slope_variance;
    }
};

Result<StraightLine> fit_errors_in_y(const std::vector<LinePoint>& points);
Result<StraightLine> fit_errors_in_both(const std::vector<LinePoint>& points);
Result<StraightLine> fit_median_slope(const std::vector<LinePoint>& points);

// Is S beyond the 99th percentile of chi-squared? By the cube-root normal approximation [WilsonHilferty1931].
bool misfit_is_unusual(const StraightLine& line);

// Variances times S / (n - 2) where that is above 1: errors that were stated too small are believed no more.
StraightLine widened_by_misfit(StraightLine line);

// Where does the line reach y, whose own standard deviation is y_error? All x that y does not contradict at z
// [Fieller1954]: exact where the delta method is not; refused (too_few_data) when the slope is not known to differ
// from 0, because then that region has no end.
struct Crossing {
    double x;
    double standard_error; // delta method
    Interval band;
};
Result<Crossing> estimate_crossing(const StraightLine& line, double y, double y_error, double z = z80);

} // namespace amentum
