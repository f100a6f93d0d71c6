// Independent draws around a mode, normal or with heavier tails, and the density they were drawn from.
//
// x = mode + factor z sqrt(nu / c),  z ~ N(0, I), c chi-squared with nu degrees of freedom: multivariate t; normal: without c.
// With factor the Cholesky factor of the curvature's inverse this is Laplace's approximation, and the t one for it to be
// put right by weights (importance.h): its tails cover more than they must.
// Each draw follows from the seed and its number alone. Degrees of freedom are whole; 0: normal.
//
// Example: draw_around(mode, factor, 7, 4000, seed), then smooth_importance(target - log_density).
#pragma once

#include <Eigen/Dense>

#include <cstdint>

namespace amentum {

struct LaplaceDraws {
    Eigen::MatrixXd values;      // parameter x draw
    Eigen::VectorXd log_density; // of the proposal, its constant included
};

LaplaceDraws draw_around(const Eigen::VectorXd& mode, const Eigen::MatrixXd& factor, int degrees_of_freedom,
                         int draws, std::uint64_t seed);

} // namespace amentum
