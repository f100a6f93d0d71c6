// The exact log-likelihood of the joint model and its exact gradient, athlete by athlete.
//
// Filter with one scalar update a reading (its error is independent of the others), so that a missing one costs nothing;
// smoother of Rauch, Tung and Striebel with the covariance of neighbours; gradient by Fisher's identity: the expectation of
// the complete data's gradient given all readings.
#pragma once

#include "inference/inside/joint_parameters.h"
#include "inference/joint_model.h"

namespace amentum {

// The readings in one row of memory, athletes one after another; values in units of the fit, days in units of 30.
struct FlatReading {
    int quality;
    double value;
    double share;
};
struct FlatDay {
    double gap; // since the athlete's day before; 0 on the first
    std::size_t first_reading, readings;
};
struct FlatAthlete {
    std::size_t first_day, days;
    Eigen::VectorXd covariates, growth;
};
struct FlatData {
    JointShape shape;
    std::vector<FlatReading> readings;
    std::vector<FlatDay> days;
    std::vector<FlatAthlete> athletes;
};

// Adds nothing for priors. gradient: resized.
double joint_log_likelihood(const FlatData& data, const Eigen::VectorXd& phi, Eigen::VectorXd& gradient);

} // namespace amentum
