#include "inference/inside/joint_priors.h"

#include <cassert>
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

constexpr double known_error_doubt = 0.4; // SD of the log of a variance known give or take a fifth

Eigen::VectorXd inside_slopes(const std::vector<Estimate>& given, const Eigen::VectorXd& unit,
                              double Estimate::*part) {
    Eigen::VectorXd slopes(static_cast<Eigen::Index>(given.size()));
    for (Eigen::Index k = 0; k < slopes.size(); ++k) // outcome's unit over the predictor's
        slopes[k] = given[static_cast<std::size_t>(k)].*part * unit[k + 1] / unit[0];
    return slopes;
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
    priors.mean.segment(shape.errors_at(), d).setConstant(std::log(0.1));
    priors.sd.segment(shape.errors_at(), d).setConstant(2);
    priors.mean.tail(shape.size() - shape.sessions_at()).setConstant(std::log(0.01));
    priors.sd.tail(shape.size() - shape.sessions_at()).setConstant(2);
    return priors;
}

NormalPriors inside_priors(const JointShape& shape, const RosterPriors& given, const Eigen::VectorXd& unit) {
    assert(static_cast<Eigen::Index>(given.within.size()) == shape.predictors() &&
           static_cast<Eigen::Index>(given.between.size()) == shape.predictors());
    assert(given.error_sd.empty() || static_cast<Eigen::Index>(given.error_sd.size()) == shape.qualities);
    assert(given.outcome_growth.empty() ||
           static_cast<Eigen::Index>(given.outcome_growth.size()) == shape.growths);
    NormalPriors priors = joint_priors(shape, inside_slopes(given.within, unit, &Estimate::value),
                                       inside_slopes(given.within, unit, &Estimate::standard_error),
                                       inside_slopes(given.between, unit, &Estimate::value),
                                       inside_slopes(given.between, unit, &Estimate::standard_error));
    for (std::size_t k = 0; k < given.error_sd.size(); ++k) {
        const Eigen::Index at = shape.errors_at() + static_cast<Eigen::Index>(k);
        priors.mean[at] = 2 * std::log(given.error_sd[k] / unit[static_cast<Eigen::Index>(k)]);
        priors.sd[at] = known_error_doubt;
    }
    for (std::size_t g = 0; g < given.outcome_growth.size(); ++g) {
        const Eigen::Index at = shape.growth_at() + shape.qualities * static_cast<Eigen::Index>(g);
        priors.mean[at] = given.outcome_growth[g].value / unit[0];
        priors.sd[at] = given.outcome_growth[g].standard_error / unit[0];
    }
    return priors;
}

} // namespace amentum
