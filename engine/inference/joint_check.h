// Can the joint fit's errors be believed, and what are they when Laplace's approximation will not do?
//
// Laplace takes the posterior for normal around its mode. Draws from that normal are weighted by the true posterior over it,
// the weights' tail smoothed; its shape k-hat tells whether the two are alike: below min(1 - 1/log10 S, 0.7) they are, and the
// weighted draws give the slopes [Vehtari2024]. Otherwise, and always for fewer than 60 athletes, Hamiltonian Monte
// Carlo over all free numbers, whitened by Laplace [Neal2011; HoffmanGelman2014], its chains compared by R-hat [Vehtari2021].
// Rosters of more than 20,000 test days are not sampled: hours, and there Laplace is at its best. Limits: proposals of this
// project, no source.
// Cost: as many gradients as free numbers; with sampling some 40,000 more. Deterministic: seeds are given.
// Refusals: too_few_data where the posterior is flat in a direction; stopped by the caller.
// What it cannot tell: whether the model is true; check_calibration counts that.
#pragma once

#include "inference/joint_model.h"

#include <cstdint>

namespace amentum {

struct JointCheckOptions {
    int draws = 1000;               // of the normal
    int warm_up = 300, kept = 1000; // of each of four chains
    bool sample_always = false;     // even where the normal will do
    std::uint64_t seed = 1;
};

struct JointCheck {
    double tail_shape;  // k-hat of the normal; infinite when it could not be told
    double shape_limit; // above it the normal will not do
    bool sampled;       // slopes are those of the chains, not of the normal
    double worst_r_hat; // over all slopes; 0 when not sampled
    double least_worth; // effective draws of the worst slope
    int divergences;
    std::vector<Estimate> within, between; // as they stand after the check, in the readings' units
    std::vector<double> within_covariance;
};

Result<JointCheck> check_joint_fit(const RosterData& data, const RosterPriors& priors, const RosterFit& fit,
                                   const FitControl& control = {}, const JointCheckOptions& options = {});

// The fit with its slopes, and what was learned of them, as they stand after the check.
RosterFit checked_fit(const RosterFit& fit, const RosterPriors& priors, const JointCheck& check);

} // namespace amentum
