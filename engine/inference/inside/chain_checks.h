// Have chains of draws met, and what are their draws worth?
//
// Each chain is cut in two halves. z: the ranks of all draws together, as normal deviates z = Phi^-1((rank - 3/8) / (S + 1/4)).
//   R-hat = sqrt((W (n - 1) / n + B / n) / W), B between and W within halves; the larger of that of z and that of the
//           ranks of |x - median|                                                              [Vehtari2021, equation 14]
//   size  = S / tau, tau = 1 + 2 sum of autocorrelations, Geyer's initial monotone sequence     [Vehtari2021, equations 10-13]
// bulk_size is the effective number of draws of z, tail_size the smaller one of "below the 5 %" and "below the 95 % quantile",
// mean_size that of x itself; error = SD / sqrt(mean_size), the Monte Carlo standard error of the mean.
// Common limits: R-hat below 1.01, sizes above 100 a chain [Vehtari2021].
// Valid: draws chain after chain, a multiple of chains, 16 or more a chain (asserted), finite.
// Draws that never vary: R-hat 1, sizes all draws, error 0; chains that never vary, each at its own place: R-hat of
// a million and more.
// What it cannot tell: what no chain visited.
#pragma once

#include <Eigen/Dense>

namespace amentum {

struct ChainCheck {
    double mean, sd;
    double r_hat;
    double bulk_size, tail_size, mean_size;
    double error;
};

ChainCheck check_chains(const Eigen::VectorXd& draws, int chains);

} // namespace amentum
