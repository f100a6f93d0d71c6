// The free numbers of the joint model in a row, what they stand for, and how a gradient finds its way back to them.
#pragma once

#include <Eigen/Dense>

#include <vector>

namespace amentum {

// A covariance whose regression of the first on the others is a parameter: see joint_model.h.
struct RegressionCovariance {
    Eigen::MatrixXd L;     // lower triangular, p x p, positive diagonal
    Eigen::VectorXd slope; // beta or gamma
    double rest;           // q: variance of the first given the others

    Eigen::MatrixXd whole() const; // (p + 1) x (p + 1), the first first
};

struct JointShape {
    Eigen::Index qualities, covariates, growths = 0;
    std::vector<int> session_qualities = {}; // those whose readings come in sessions

    Eigen::Index predictors() const { return qualities - 1; }
    Eigen::Index triangle() const { return predictors() * (predictors() + 1) / 2; }
    Eigen::Index one_covariance() const { return triangle() + predictors() + 1; }
    // In order: means, covariate effects, growth effects, the covariance within, the one between, log error variances, log
    // variances of sessions.
    Eigen::Index growth_at() const { return qualities * (1 + covariates); }
    Eigen::Index within_at() const { return growth_at() + qualities * growths; }
    Eigen::Index between_at() const { return within_at() + one_covariance(); }
    Eigen::Index errors_at() const { return between_at() + one_covariance(); }
    Eigen::Index sessions_at() const { return errors_at() + qualities; }
    Eigen::Index size() const { return sessions_at() + static_cast<Eigen::Index>(session_qualities.size()); }
    Eigen::Index slope_at(Eigen::Index covariance_at, Eigen::Index predictor) const {
        return covariance_at + triangle() + predictor;
    }
};

struct JointParameters {
    Eigen::VectorXd mean;
    Eigen::MatrixXd covariate_effect; // qualities x covariates
    Eigen::MatrixXd growth_effect;    // qualities x growths
    RegressionCovariance within, between;
    Eigen::VectorXd error;   // variance of each quality's reading
    Eigen::VectorXd session; // variance of sessions, of each of session_qualities
};

JointParameters joint_parameters(const JointShape& shape, const Eigen::VectorXd& phi);

// d/dphi of a function whose derivative by the whole covariance is `by_whole` (symmetric), put into out at `at`.
void pull_back(const JointShape& shape, const RegressionCovariance& covariance,
               const Eigen::MatrixXd& by_whole, Eigen::Index at, Eigen::VectorXd& out);

} // namespace amentum
