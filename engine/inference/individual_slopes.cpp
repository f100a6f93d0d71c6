#include "inference/individual_slopes.h"

#include "inference/inside/joint_likelihood.h"
#include "inference/inside/roster_scaling.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace amentum {
namespace {

using Eigen::Index;
using Eigen::MatrixXd;
using Eigen::VectorXd;

constexpr double prior_scale = 0.1; // half-normal, spreads (proposal of this project)
constexpr int nodes = 10;           // of tau, to three prior scales
constexpr std::size_t enough = 300; // athletes settle tau as well as it can be
// Estimated spreads lean low by a quarter to a third (measured: tests/laws/individual_slopes_laws_test.cpp), and one value is taken
// without its doubt: an athlete's own slope is given that much more room.
constexpr double lean = 1.35;
constexpr double least_share = 0.02; // of q that own slopes leave

// The roster at one tau.
struct AtSpread {
    double tau;
    JointModelNow now;
    VectorXd shifts; // of all sessions
};

struct OwnSlopes {
    VectorXd mode;
    MatrixXd covariance; // given beta
    double log_average;  // of the athlete's likelihood over own slopes
};

AtSpread at_spread(const FlatData& data, const VectorXd& mode, double tau, const PartRunner& run) {
    const JointShape& shape = data.shape;
    AtSpread at{tau, joint_model_now(shape, mode), {}};
    const Index p = shape.predictors();
    const double q = at.now.parts.within.rest;
    const double taken = tau * tau * at.now.Q.bottomRightCorner(p, p).trace();
    at.now.parts.within.rest = std::max(least_share * q, q - taken);
    at.now.Q = at.now.parts.within.whole();
    at.shifts = session_posterior(data, at.now, run).mean;
    return at;
}

// The athlete's log posterior by its own slopes, its gradient and minus its curvature.
struct Surface {
    const FlatData& data;
    const AtSpread& at;
    const FlatAthlete& athlete;
    VectorXd shifts = athlete.sessions.empty() ? VectorXd(0) : VectorXd(at.shifts(athlete.sessions));

    double value(const VectorXd& slopes, VectorXd& gradient) const {
        JointModelNow now = at.now;
        now.parts.within.slope = slopes;
        now.Q = now.parts.within.whole();
        const VectorXd from_roster = slopes - at.now.parts.within.slope;
        const double log_likelihood = slope_gradient(data, now, athlete, shifts, gradient);
        gradient -= from_roster / (at.tau * at.tau);
        return log_likelihood - from_roster.squaredNorm() / (2 * at.tau * at.tau);
    }
    MatrixXd information(const VectorXd& slopes) const {
        const double step = 0.01 * at.tau;
        const Index p = slopes.size();
        MatrixXd H(p, p);
        VectorXd up, down;
        for (Index k = 0; k < p; ++k) {
            value(slopes + step * VectorXd::Unit(p, k), up);
            value(slopes - step * VectorXd::Unit(p, k), down);
            H.col(k) = (down - up) / (2 * step);
        }
        return 0.5 * (H + H.transpose());
    }
};

// Newton's iteration from the roster's slopes; a step that does not gain is halved.
OwnSlopes own_slopes(const FlatData& data, const AtSpread& at, const FlatAthlete& athlete) {
    const Surface surface{data, at, athlete};
    OwnSlopes own{at.now.parts.within.slope, {}, 0};
    const Index p = own.mode.size();
    const MatrixXd none = MatrixXd::Identity(p, p) / (at.tau * at.tau);
    VectorXd gradient, next;
    double value = surface.value(own.mode, gradient);
    Eigen::LLT<MatrixXd> L;
    for (int i = 0; i < 4; ++i) {
        L.compute(surface.information(own.mode));
        if (L.info() != Eigen::Success)
            L.compute(none);
        VectorXd step = L.solve(gradient);
        if (gradient.dot(step) < 1e-4)
            break;
        double gained = surface.value(own.mode + step, next);
        for (int halved = 0; halved < 6 && !(gained > value); ++halved)
            gained = surface.value(own.mode + (step *= 0.5), next);
        if (!(gained > value))
            break;
        own.mode += step;
        value = gained;
        gradient = next;
    }
    L.compute(surface.information(own.mode));
    if (L.info() != Eigen::Success)
        L.compute(none);
    own.covariance = L.solve(MatrixXd::Identity(p, p));
    own.log_average =
        value - L.matrixLLT().diagonal().array().log().sum() - static_cast<double>(p) * std::log(at.tau);
    return own;
}

std::vector<OwnSlopes> slopes_at(const FlatData& data, const AtSpread& at, std::size_t most,
                                 const PartRunner& run) {
    const std::size_t n = data.athletes.size(), count = std::min(n, most);
    std::vector<OwnSlopes> all(count);
    const auto one = [&](std::size_t i) { all[i] = own_slopes(data, at, data.athletes[i * n / count]); };
    if (run)
        run(count, one);
    else
        for (std::size_t i = 0; i < count; ++i)
            one(i);
    return all;
}

struct SpreadPosterior {
    double mean, square; // of tau, of tau^2
};

SpreadPosterior spread_posterior(const FlatData& data, const VectorXd& mode, const PartRunner& run) {
    std::array<double, nodes> taus, logs{};
    for (std::size_t i = 0; i < nodes; ++i) {
        taus[i] = 3 * prior_scale * (static_cast<double>(i) + 0.5) / nodes;
        const auto all = slopes_at(data, at_spread(data, mode, taus[i], run), enough, run);
        for (const auto& own : all)
            logs[i] += own.log_average;
        logs[i] *= static_cast<double>(data.athletes.size()) / static_cast<double>(all.size());
        logs[i] -= 0.5 * taus[i] * taus[i] / (prior_scale * prior_scale);
    }
    const double most = *std::max_element(logs.begin(), logs.end());
    double weights = 0;
    SpreadPosterior posterior{0, 0};
    for (std::size_t i = 0; i < nodes; ++i) {
        const double weight = std::exp(logs[i] - most);
        weights += weight;
        posterior.mean += weight * taus[i];
        posterior.square += weight * taus[i] * taus[i];
    }
    return {posterior.mean / weights, posterior.square / weights};
}

} // namespace

IndividualSlopes estimate_individual_slopes(const RosterData& data, const RosterFit& fit,
                                            const PartRunner& run) {
    constexpr double prior_variance = prior_scale * prior_scale * (1 - 2 / std::numbers::pi);
    const JointShape shape = shape_of(data);
    const auto d = shape.qualities;
    const RosterScaling scaling{Eigen::Map<const VectorXd>(fit.mode.centre.data(), d),
                                Eigen::Map<const VectorXd>(fit.mode.unit.data(), d)};
    const FlatData flat = flat_data(data, scaling);
    const VectorXd phi = Eigen::Map<const VectorXd>(fit.mode.phi.data(), shape.size());
    const auto [mean, square] = spread_posterior(flat, phi, run);
    const double variance = square - mean * mean;
    IndividualSlopes slopes{{mean, std::sqrt(variance)}, 1 - variance / prior_variance, {}};
    for (const auto& own :
         slopes_at(flat, at_spread(flat, phi, lean * std::sqrt(square), run), flat.athletes.size(), run)) {
        auto& athlete = slopes.athletes.emplace_back();
        for (Index k = 0; k < shape.predictors(); ++k) {
            const double back = scaling.unit[0] / scaling.unit[k + 1];
            const double roster = fit.within[static_cast<std::size_t>(k)].standard_error;
            athlete.push_back(
                {own.mode[k] * back, std::sqrt(own.covariance(k, k) * back * back + roster * roster)});
        }
    }
    return slopes;
}

} // namespace amentum
