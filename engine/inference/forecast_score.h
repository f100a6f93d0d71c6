// How good was a forecast that came with its uncertainty, once the value is known? (0 is perfect.)
//
// Continuous ranked probability score of a normal forecast N(m, s^2) of y, with z = (y - m) / s:
//   CRPS = s [z (2 Phi(z) - 1) + 2 phi(z) - 1 / sqrt(pi)]  [Gneiting2007, eq. 21 from memory]
// Units: those of y; for a forecast without spread it is the absolute error.
// Range: s above 0.
// What it cannot tell: whether a forecast was lucky; average it over many.
//
// Example: N(0, 1) and y = 0: 0.2336949773.
#pragma once

#include "values/interval.h"

namespace amentum {

double forecast_score(const Estimate& forecast, double value);

} // namespace amentum
