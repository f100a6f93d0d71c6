// How sure is a published correlation?
//
//   z = atanh r,  SE = 1 / sqrt(n - 3),  limits tanh(z -+ 1.96 SE)    [Fisher1921]
//   r = sin(pi tau / 2)  from Kendall's tau, bivariate normal         [Greiner1909] (from memory)
// Units: none. Valid: |r| < 1, n above 3, |tau| <= 1. Refusals: outside.
// What it cannot tell: causes; the pull of unpublished studies; growth (age alone lifts r among the young).
// Example: r 0.71, n 19 -> z 0.887, SE 0.250, r from 0.38 to 0.88
#pragma once

#include "values/interval.h"
#include "values/refusal.h"

namespace amentum {

struct FisherZ {
    Estimate z;
    Interval limits_of_r; // central 95 %
};

Result<FisherZ> fisher_z(double r, double n);
Result<double> correlation_from_tau(double tau);

} // namespace amentum
