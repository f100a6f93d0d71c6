#include "inference/inside/joint_search.h"

#include "inference/inside/minimise.h"

#include <cmath>
#include <functional>
#include <limits>

namespace amentum {
namespace {

using Eigen::Index;
using Eigen::MatrixXd;
using Eigen::VectorXd;

constexpr double usual_evaluations = 80; // until the mode: for the share told, nothing else
constexpr double near_enough = 1;        // SDs between two modes that share a curvature

// Minus the log posterior an athlete; not a number once the caller has stopped.
struct Objective {
    const FlatData& data;
    const NormalPriors& priors;
    const FitControl& control;
    double scale;
    mutable int evaluations = 0;
    mutable bool stopped = false;

    bool going(double share) const {
        stopped = stopped || (control.going && !control.going(share));
        return !stopped;
    }
    double operator()(const VectorXd& phi, VectorXd& gradient) const {
        const double share = 0.5 * (1 - std::exp(-evaluations++ / usual_evaluations));
        if (!going(share)) {
            gradient = VectorXd::Zero(phi.size());
            return std::numeric_limits<double>::quiet_NaN();
        }
        return value(phi, gradient);
    }
    double value(const VectorXd& phi, VectorXd& gradient) const {
        VectorXd g;
        double log_posterior = joint_log_likelihood(data, phi, g, control.run);
        log_posterior += priors.add(phi, g);
        gradient = -scale * g;
        return -scale * log_posterior;
    }
};

MatrixXd curvature_from(const Objective& objective, const Minimum& mode, Index first) {
    constexpr double step = 1e-5;
    const Index n = mode.x.size() - first;
    MatrixXd H(n, n);
    VectorXd gradient(mode.x.size());
    for (Index j = 0; j < n && objective.going(0.5 + 0.5 * static_cast<double>(j) / static_cast<double>(n));
         ++j) {
        VectorXd moved = mode.x;
        moved[first + j] += step;
        objective.value(moved, gradient);
        H.col(j) = (gradient - mode.gradient).tail(n) / step;
    }
    return 0.5 * (H + H.transpose()) / objective.scale;
}

MatrixXd square(const std::vector<double>& rows, Index n) {
    return Eigen::Map<const MatrixXd>(rows.data(), n, n);
}

// Of the objective; where none was kept, the curvature from growth on and the identity for the means.
MatrixXd model_of(const RosterMode& kept, Index n, Index first, double scale) {
    if (!kept.model.empty())
        return square(kept.model, n);
    MatrixXd model = MatrixXd::Identity(n, n);
    model.bottomRightCorner(n - first, n - first) = scale * square(kept.curvature, n - first);
    return model;
}

} // namespace

bool starts_from(const JointShape& shape, const RosterMode& kept) {
    const auto numbers = static_cast<std::size_t>(shape.size());
    const auto block = static_cast<std::size_t>(shape.size() - shape.growth_at());
    return kept.qualities == shape.qualities && kept.covariates == shape.covariates &&
           kept.growths == shape.growths && kept.phi.size() == numbers &&
           (kept.model.empty() || kept.model.size() == numbers * numbers) &&
           kept.curvature.size() == block * block;
}

Result<JointMode> JointSearch::find(const RosterMode* from) const {
    const Index n = data.shape.size(), first = data.shape.growth_at();
    const Objective objective{data, priors, control, 1 / static_cast<double>(data.athletes.size())};
    const VectorXd start = from ? VectorXd(Eigen::Map<const VectorXd>(from->phi.data(), n)) : priors.mean;
    MinimumOptions options{1e-9, 0.5, 1000, {}};
    if (from)
        options.model = model_of(*from, n, first, objective.scale);
    const Minimum mode = minimise(std::cref(objective), start, options);
    MatrixXd curvature;
    if (from && !objective.stopped) {
        const MatrixXd kept = square(from->curvature, n - first);
        const VectorXd moved = (mode.x - start).tail(n - first);
        if (moved.dot(kept * moved) < near_enough * near_enough)
            curvature = kept;
    }
    if (curvature.size() == 0)
        curvature = curvature_from(objective, mode, first);
    if (objective.stopped)
        return Refusal{RefusalCode::stopped, "The fit was stopped before it was done; nothing of it is kept.",
                       "", "", ""};
    return JointMode{mode.x, mode.model, curvature, mode.gradient.cwiseAbs().maxCoeff(), mode.evaluations};
}

} // namespace amentum
