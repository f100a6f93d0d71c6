// Quantiles of the chi-squared and F distributions in plain double precision (Boost.Math), never wider, so
// that they are the same on every machine. 0 < p < 1; degrees of freedom above 0 (asserted).
#pragma once

namespace amentum {

double chi_squared_quantile(double p, double freedom);
double f_quantile(double p, double freedom_above, double freedom_below);

} // namespace amentum
