// The mode of the joint model's posterior, and the curvature there.
//
// Scaled trust region (minimise.h) from the priors' means, or from a mode kept earlier. Curvature by forward differences of the
// exact gradient, which is 0 at the mode, from growth on: means of a normal model carry no information about its covariances
// in expectation, so that block gives the errors by itself.
// A curvature kept with an earlier mode is taken over when the new mode lies within one SD of it, all directions together.
// Refusals: stopped by the caller.
#pragma once

#include "inference/inside/joint_likelihood.h"
#include "inference/inside/joint_priors.h"

namespace amentum {

struct JointMode {
    Eigen::VectorXd phi;
    Eigen::MatrixXd model;     // the search's last, of the log posterior an athlete
    Eigen::MatrixXd curvature; // of minus the log posterior
    double gradient;           // largest, an athlete
    int evaluations;
};

bool starts_from(const JointShape& shape, const RosterMode& kept);

struct JointSearch {
    const FlatData& data;
    const NormalPriors& priors;
    const FitControl& control;

    Result<JointMode> find(const RosterMode* from) const;
};

} // namespace amentum
