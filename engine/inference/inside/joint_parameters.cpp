#include "inference/inside/joint_parameters.h"

#include <cmath>

namespace amentum {
namespace {

using Eigen::Index;
using Eigen::MatrixXd;
using Eigen::VectorXd;

// Row by row the lower triangle, diagonals as logarithms; then the slopes; then the log of what is left.
RegressionCovariance covariance_at(const JointShape& shape, const VectorXd& phi, Index at) {
    const Index p = shape.predictors();
    RegressionCovariance c{MatrixXd::Zero(p, p), phi.segment(at + shape.triangle(), p),
                           std::exp(phi[at + shape.triangle() + p])};
    for (Index i = 0, k = at; i < p; ++i)
        for (Index j = 0; j <= i; ++j, ++k)
            c.L(i, j) = i == j ? std::exp(phi[k]) : phi[k];
    return c;
}

} // namespace

MatrixXd RegressionCovariance::whole() const {
    const Index p = slope.size();
    const MatrixXd xx = L * L.transpose();
    MatrixXd C(p + 1, p + 1);
    C.bottomRightCorner(p, p) = xx;
    C.bottomLeftCorner(p, 1) = xx * slope;
    C.topRightCorner(1, p) = C.bottomLeftCorner(p, 1).transpose();
    C(0, 0) = slope.dot(C.bottomLeftCorner(p, 1).col(0)) + rest;
    return C;
}

JointParameters joint_parameters(const JointShape& shape, const VectorXd& phi) {
    const Index d = shape.qualities;
    JointParameters parts{phi.head(d),
                          MatrixXd::Zero(d, shape.covariates),
                          MatrixXd::Zero(d, shape.growths),
                          covariance_at(shape, phi, shape.within_at()),
                          covariance_at(shape, phi, shape.between_at()),
                          phi.segment(shape.errors_at(), d).array().exp(),
                          phi.tail(shape.size() - shape.sessions_at()).array().exp()};
    for (Index k = 0; k < shape.covariates; ++k)
        parts.covariate_effect.col(k) = phi.segment(d * (1 + k), d);
    for (Index k = 0; k < shape.growths; ++k)
        parts.growth_effect.col(k) = phi.segment(shape.growth_at() + d * k, d);
    return parts;
}

// With D = blockdiag(rest, xx) and T the unit matrix whose first row also holds the slopes, C = T D T'. So dC = dT D T' + T D
// dT' + T dD T', and for symmetric G = by_whole: by xx it is (T'GT)_xx, by rest (T'GT)_00, by the slopes 2 (D T'G)_x0.
void pull_back(const JointShape& shape, const RegressionCovariance& covariance, const MatrixXd& by_whole,
               Index at, VectorXd& out) {
    const Index p = shape.predictors();
    MatrixXd T = MatrixXd::Identity(p + 1, p + 1);
    T.topRightCorner(1, p) = covariance.slope.transpose();
    const MatrixXd TG = T.transpose() * by_whole;
    const MatrixXd TGT = TG * T;
    const MatrixXd xx = covariance.L * covariance.L.transpose();
    const MatrixXd by_L = 2 * TGT.bottomRightCorner(p, p) * covariance.L;
    for (Index i = 0, k = at; i < p; ++i)
        for (Index j = 0; j <= i; ++j, ++k)
            out[k] = by_L(i, j) * (i == j ? covariance.L(i, i) : 1);
    out.segment(at + shape.triangle(), p) = 2 * xx * TG.bottomLeftCorner(p, 1);
    out[at + shape.triangle() + p] = TGT(0, 0) * covariance.rest;
}

} // namespace amentum
