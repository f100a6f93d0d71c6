// Priors of the joint model in the units of the fit (every quality of spread 1, 30 days): normal on each free number.
//
// beta and gamma: the caller's. The rest weak (proposals of this project, no source): log of the diagonal of L within
// N(log 0.1, 1.5), between N(log 0.7, 1); below the diagonal N(0, 0.3) and N(0, 1); log of what is left of the outcome
// N(log 0.01, 2) and N(log 0.3, 1.5); log error variances N(log 0.1, 2), of sessions N(log 0.01, 2); means N(0, 3); covariate effects N(0, 1); growth N(0, 0.3) a 30 days.
#pragma once

#include "inference/inside/joint_parameters.h"
#include "inference/joint_model.h"

namespace amentum {

// SD of athletes' own slopes about the roster's, in spreads (proposal, as in individual_slopes.h): its square over the number of
// athletes is in every within slope's variance.
inline constexpr double usual_own_spread = 0.1;

struct NormalPriors {
    Eigen::VectorXd mean;
    Eigen::VectorXd sd;

    // Log density without its constant; adds its gradient.
    double add(const Eigen::VectorXd& phi, Eigen::VectorXd& gradient) const;
};

// within, between: of the slopes, in the units of the fit.
NormalPriors joint_priors(const JointShape& shape, const Eigen::VectorXd& within_mean,
                          const Eigen::VectorXd& within_sd, const Eigen::VectorXd& between_mean,
                          const Eigen::VectorXd& between_sd);

// As a caller gives them, in the readings' units; unit: of each quality, one of the fit.
NormalPriors inside_priors(const JointShape& shape, const RosterPriors& given, const Eigen::VectorXd& unit);

} // namespace amentum
