// How steep is y on x when x is measured with a known error? Least squares lays the line too flat; this lifts it.
//
//   b = m_xy / (m_xx - s^2),  a = mean y - b mean x,  m of n - 1                                  [Fuller1987, 1.2]
//   v_vv = sum (y - mean y - b (x - mean x))^2 / (n - 2)
//   Var b = (m_xx v_vv + b^2 s^4) / ((n - 1) (m_xx - s^2)^2)
// The error s of x is known, e.g. from repeats; that of y need not be, for it is in the scatter about the line.
// Units: those of y and x. Valid: 3 points or more.
// Refusals: too_few_data when there are fewer points, or when x varies by no more than twice its error variance: then
//   nothing is left to divide by. The factor 2 is a proposal of this project.
// What it cannot tell: cause. With several qualities at once it is the wrong tool: joint_model.h takes the errors of all.
// Example: corn yield on soil nitrogen at 11 sites, error variance of the soil analysis 57: 0.4232 +- 0.1745; least squares
//   says 0.3440 [Fuller1987]
#pragma once

#include "values/interval.h"
#include "values/refusal.h"

#include <span>

namespace amentum {

struct CorrectedSlope {
    Estimate slope;
    double intercept;
    double uncorrected; // least squares
    double reliability; // share of the variance of x that is not error
};

Result<CorrectedSlope> estimate_slope_with_error(std::span<const double> x, std::span<const double> y,
                                                 double x_error);

} // namespace amentum
