// The value below which a standard normal variable falls with chance p: the inverse of normal_cdf.
//
// By the inverse error function of Boost.Math in plain double precision, never wider, so that draws are the
// same on every machine.
// Range: 0 < p < 1 (asserted).
//
// Example: normal_quantile(0.9) == 1.2815515655446004 (z80 of values/interval.h).
#pragma once

namespace amentum {

double normal_quantile(double p);

} // namespace amentum
