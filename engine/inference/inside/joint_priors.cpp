#include "inference/inside/joint_priors.h"

#include <cmath>

namespace amentum {
namespace {

struct Weak { // of one covariance
    double log_diagonal, diagonal_sd, below_sd, log_rest, rest_sd;
};

void put(const JointShape& shape, Eigen::Index at, const Weak& weak, const Eigen::VectorXd& slope_mean,
         const Eigen::VectorXd& slope_sd, NormalPriors& priors) {
    const Eigen::Index p = shape.predictors();
    for (Eigen::Index i = 0, k = at; i < p; ++i)
        for (Eigen::Index j = 0; j <= i; ++j, ++k) {
            priors.mean[k] = i == j ? weak.log_diagonal : 0;
            priors.sd[k] = i == j ? weak.diagonal_sd : weak.below_sd;
        }
    priors.mean.segment(at + shape.triangle(), p) = slope_mean;
    priors.sd.segment(at + shape.triangle(), p) = slope_sd;
    priors.mean[at + shape.triangle() + p] = weak.log_rest;
    priors.sd[at + shape.triangle() + p] = weak.rest_sd;
}

} // namespace

double NormalPriors::add(const Eigen::VectorXd& phi, Eigen::VectorXd& gradient) const {
    const Eigen::ArrayXd z = (phi - mean).array() / sd.array();
    gradient.array() -= z / sd.array();
    return -0.5 * z.square().sum();
}

NormalPriors joint_priors(const JointShape& shape, const Eigen::VectorXd& within_mean,
                          const Eigen::VectorXd& within_sd, const Eigen::VectorXd& between_mean,
                          const Eigen::VectorXd& between_sd) {
    const Eigen::Index d = shape.qualities;
    NormalPriors priors{Eigen::VectorXd::Zero(shape.size()), Eigen::VectorXd::Ones(shape.size())};
    priors.sd.head(d).setConstant(3);
    priors.sd.segment(shape.growth_at(), d * shape.growths).setConstant(0.3);
    put(shape, shape.within_at(), {std::log(0.1), 1.5, 0.3, std::log(0.01), 2}, within_mean, within_sd,
        priors);
    put(shape, shape.between_at(), {std::log(0.7), 1, 1, std::log(0.3), 1.5}, between_mean, between_sd,
        priors);
    priors.mean.tail(d).setConstant(std::log(0.1));
    priors.sd.tail(d).setConstant(2);
    return priors;
}

} // namespace amentum
