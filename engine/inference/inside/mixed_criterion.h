// The profiled criterion of a mixed model, its gradient, and the estimates at a point.
#pragma once

#include "inference/inside/mixed_statistics.h"

namespace amentum {

struct MixedPoint {
    double criterion;
    Eigen::MatrixXd to_covariance; // d criterion / d (Lambda Lambda'), q x q
    Eigen::VectorXd to_crossed;    // d criterion / d tau, one a crossed factor
    Eigen::VectorXd beta;
    Eigen::MatrixXd inverse; // (X'V^-1 X)^-1
    double residual_sum;     // y'Py
    Eigen::MatrixXd scores;  // groups x q: Z'Py
};

// Not finite where X'V^-1 X has no inverse.
MixedPoint mixed_criterion(const MixedStatistics& all, const Eigen::MatrixXd& Lambda,
                           const Eigen::VectorXd& tau, Likelihood likelihood);

} // namespace amentum
