#include "inference/joint_check.h"

#include "inference/inside/chain_checks.h"
#include "inference/inside/hamiltonian.h"
#include "inference/inside/importance.h"
#include "inference/inside/joint_search.h"
#include "inference/inside/laplace_draws.h"
#include "inference/inside/roster_scaling.h"

#include <algorithm>
#include <atomic>
#include <cassert>
#include <cmath>

namespace amentum {
namespace {

using Eigen::Index;
using Eigen::MatrixXd;
using Eigen::VectorXd;

constexpr std::size_t few_athletes = 60, many_days = 20'000; // (proposals of this project, no source)
constexpr int leapfrogs = 8;
constexpr double share_of_normal = 0.3; // of the work, as told

struct Posterior {
    FlatData data;
    NormalPriors priors;
    VectorXd mode;
    MatrixXd factor; // Cholesky factor of Laplace's covariance

    double operator()(const VectorXd& phi, VectorXd& gradient) const {
        const double log_likelihood = joint_log_likelihood(data, phi, gradient);
        return log_likelihood + priors.add(phi, gradient);
    }
    double value(const VectorXd& phi) const {
        VectorXd unused = VectorXd::Zero(phi.size());
        return joint_log_likelihood(data, phi) + priors.add(phi, unused);
    }
};

// The fit's own curvature leaves out the means; here every free number has its own.
MatrixXd whole_curvature(const Posterior& posterior, const FitControl& control) {
    constexpr double step = 1e-5;
    const Index n = posterior.mode.size();
    VectorXd at_mode;
    posterior(posterior.mode, at_mode);
    MatrixXd H(n, n);
    const auto column = [&](std::size_t j) {
        VectorXd moved = posterior.mode, gradient;
        moved[static_cast<Index>(j)] += step;
        posterior(moved, gradient);
        H.col(static_cast<Index>(j)) = (at_mode - gradient) / step;
    };
    if (control.run)
        control.run(static_cast<std::size_t>(n), column);
    else
        for (Index j = 0; j < n; ++j)
            column(static_cast<std::size_t>(j));
    return 0.5 * (H + H.transpose());
}

Result<Posterior> posterior_of(const RosterData& data, const RosterPriors& priors, const RosterMode& mode,
                               const FitControl& control) {
    const JointShape shape = shape_of(data);
    assert(starts_from(shape, mode));
    const auto d = shape.qualities;
    const RosterScaling scaling{Eigen::Map<const VectorXd>(mode.centre.data(), d),
                                Eigen::Map<const VectorXd>(mode.unit.data(), d)};
    Posterior posterior{flat_data(data, scaling),
                        inside_priors(shape, priors, scaling.unit),
                        Eigen::Map<const VectorXd>(mode.phi.data(), shape.size()),
                        {}};
    const MatrixXd H = whole_curvature(posterior, control);
    // H = L L', so x = mode + L'^-1 z has covariance H^-1; its own Cholesky factor whitens alike.
    const MatrixXd covariance = Eigen::LLT<MatrixXd>(H).solve(MatrixXd::Identity(H.rows(), H.cols()));
    const Eigen::LLT<MatrixXd> factor(covariance);
    if (factor.info() != Eigen::Success || !covariance.allFinite())
        return Refusal{
            RefusalCode::too_few_data,
            "The fit is flat in a direction, so its intervals cannot be checked. More test days of the same "
            "athletes may help.",
            "test days", std::to_string(posterior.data.days.size()), "more"};
    posterior.factor = factor.matrixL();
    return posterior;
}

struct Weighted {
    LaplaceDraws draws;
    ImportanceWeights weights;
};

Weighted weigh_normal(const Posterior& posterior, const JointCheckOptions& options,
                      const FitControl& control) {
    Weighted out{draw_around(posterior.mode, posterior.factor, 0, options.draws, options.seed), {}};
    VectorXd ratios(options.draws);
    std::atomic<bool> stopped = false;
    std::atomic<int> done = 0;
    const auto one = [&](std::size_t i) {
        const auto at = static_cast<Index>(i);
        if (stopped)
            return;
        ratios[at] = posterior.value(out.draws.values.col(at)) - out.draws.log_density[at];
        if (control.going && !control.going(share_of_normal * ++done / options.draws))
            stopped = true;
    };
    if (control.run)
        control.run(static_cast<std::size_t>(options.draws), one);
    else
        for (int i = 0; i < options.draws; ++i)
            one(static_cast<std::size_t>(i));
    if (!stopped)
        out.weights = smooth_importance(ratios);
    return out;
}

// Slopes of weighted or equal draws, in the readings' units.
void describe_slopes(const MatrixXd& values, const VectorXd& weights, const JointShape& shape,
                     const RosterMode& mode, double for_own_slopes, JointCheck& check) {
    const Index p = shape.predictors();
    const auto back = [&](Index k) { return mode.unit[0] / mode.unit[static_cast<std::size_t>(k) + 1]; };
    const auto add = [&](Index at, double allowance, std::vector<Estimate>& slopes) {
        for (Index k = 0; k < p; ++k) {
            const VectorXd draws = values.row(at + k);
            slopes.push_back({weighted_mean(draws, weights) * back(k),
                              std::sqrt(weighted_variance(draws, weights) + allowance) * back(k)});
        }
    };
    const Index within = shape.slope_at(shape.within_at(), 0);
    add(within, for_own_slopes, check.within);
    add(shape.slope_at(shape.between_at(), 0), 0, check.between);
    MatrixXd centred = values.middleRows(within, p);
    centred.colwise() -= VectorXd(centred * weights);
    const MatrixXd covariance = centred * weights.asDiagonal() * centred.transpose();
    for (Index i = 0; i < p; ++i)
        for (Index j = 0; j < p; ++j)
            check.within_covariance.push_back((covariance(i, j) + (i == j ? for_own_slopes : 0)) * back(i) *
                                              back(j));
}

} // namespace

Result<JointCheck> check_joint_fit(const RosterData& data, const RosterPriors& priors, const RosterFit& fit,
                                   const FitControl& control, const JointCheckOptions& options) {
    const Refusal stopped{RefusalCode::stopped, "The check of the fit was stopped before it was done.", "",
                          "", ""};
    const auto found = posterior_of(data, priors, fit.mode, control);
    if (!found)
        return found.refusal();
    const Posterior& posterior = *found;
    const JointShape& shape = posterior.data.shape;
    const Weighted weighted = weigh_normal(posterior, options, control);
    if (weighted.weights.weights.size() == 0)
        return stopped;
    JointCheck check{
        weighted.weights.tail_shape, tail_shape_limit(options.draws), false, 0, 0, 0, {}, {}, {}};
    const double for_own_slopes =
        usual_own_spread * usual_own_spread / static_cast<double>(data.athletes.size());
    const bool will_do = !options.sample_always && check.tail_shape < check.shape_limit &&
                         data.athletes.size() >= few_athletes;
    if (will_do) {
        check.least_worth = weighted.weights.size;
        describe_slopes(weighted.draws.values, weighted.weights.weights, shape, fit.mode, for_own_slopes,
                        check);
        return check;
    }
    if (posterior.data.days.size() > many_days) {
        check.within = fit.within;
        check.between = fit.between;
        check.within_covariance = fit.within_covariance;
        return check;
    }
    HamiltonianOptions sampling{4,   options.warm_up, options.kept, leapfrogs,
                                0.9, options.seed,    {},           control.run};
    if (control.going)
        sampling.going = [&](double share) {
            return control.going(share_of_normal + (1 - share_of_normal) * share);
        };
    const Draws draws =
        draw_hamiltonian([&](const VectorXd& x, VectorXd& gradient) { return posterior(x, gradient); },
                         posterior.mode, posterior.factor, sampling);
    if (draws.stopped)
        return stopped;
    check.sampled = true;
    check.divergences = draws.divergences;
    check.least_worth = static_cast<double>(draws.values.cols());
    for (const Index first : {shape.slope_at(shape.within_at(), 0), shape.slope_at(shape.between_at(), 0)})
        for (Index k = 0; k < shape.predictors(); ++k) {
            const ChainCheck chain = check_chains(draws.values.row(first + k), draws.chains);
            check.worst_r_hat = std::max(check.worst_r_hat, chain.r_hat);
            check.least_worth = std::min(check.least_worth, chain.bulk_size);
        }
    const auto count = draws.values.cols();
    describe_slopes(draws.values, VectorXd::Constant(count, 1 / static_cast<double>(count)), shape, fit.mode,
                    for_own_slopes, check);
    return check;
}

RosterFit checked_fit(const RosterFit& fit, const RosterPriors& priors, const JointCheck& check) {
    RosterFit checked = fit;
    checked.within = check.within;
    checked.between = check.between;
    checked.within_covariance = check.within_covariance;
    const auto learned = [](const Estimate& after, const Estimate& before) {
        return 1 - std::pow(after.standard_error / before.standard_error, 2);
    };
    for (std::size_t k = 0; k < check.within.size(); ++k) {
        checked.within_learned[k] = learned(check.within[k], priors.within[k]);
        checked.between_learned[k] = learned(check.between[k], priors.between[k]);
    }
    return checked;
}

} // namespace amentum
