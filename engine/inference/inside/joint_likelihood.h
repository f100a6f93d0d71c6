// The exact log-likelihood of the joint model and its exact gradient.
//
// Sessions crossed with athletes: with s ~ N(0, D), each athlete's likelihood is quadratic in its sessions' shifts, so
//   log p(y) = sum_i l_i(0) + b'M^-1 b / 2 - log|M| / 2 - log|D| / 2,   M = D^-1 + sum_i A_i
// Gradient by Fisher's identity: the expectation of the complete data's gradient given all readings.
// Athletes are summed in 16 parts, each in order, and the parts in order: the same on any number of threads.
// Cost: linear in test days; beside it the cube of the number of sessions.
#pragma once

#include "inference/inside/athlete_pass.h"
#include "inference/joint_model.h"

namespace amentum {

// Shifts of all sessions given all readings, and their covariance, in units of the fit.
struct SessionPosterior {
    Eigen::VectorXd mean;
    Eigen::MatrixXd covariance;
    double log_likelihood; // of all readings
};
SessionPosterior session_posterior(const FlatData& data, const JointModelNow& now,
                                   const PartRunner& run = {});

SessionShifts shifts_of(const FlatAthlete& athlete, const SessionPosterior& sessions);

// Adds nothing for priors. gradient: resized.
double joint_log_likelihood(const FlatData& data, const Eigen::VectorXd& phi, Eigen::VectorXd& gradient,
                            const PartRunner& run = {});
double joint_log_likelihood(const FlatData& data, const Eigen::VectorXd& phi, const PartRunner& run = {});

// Of one athlete, its sessions' shifts given: the log-likelihood, and its gradient by the slopes beta alone.
double slope_gradient(const FlatData& data, const JointModelNow& now, const FlatAthlete& athlete,
                      const Eigen::VectorXd& shifts, Eigen::VectorXd& gradient);

} // namespace amentum
