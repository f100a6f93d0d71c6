#include "inference/joint_model.h"

#include "inference/inside/joint_likelihood.h"
#include "inference/inside/joint_priors.h"
#include "inference/inside/joint_search.h"
#include "inference/inside/roster_scaling.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <numeric>

namespace amentum {
namespace {

using Eigen::Index;
using Eigen::MatrixXd;
using Eigen::VectorXd;

constexpr double fair_gradient = 1e-5; // of the log posterior an athlete; larger: no mode

Result<Done> check_data(const RosterData& data) {
    const auto days = [](const RosterAthlete& athlete) { return athlete.days.size(); };
    if (data.qualities < 2)
        return Refusal{RefusalCode::too_few_data, "One quality alone goes with nothing.", "qualities",
                       std::to_string(data.qualities), "2 or more"};
    if (data.athletes.size() < 3)
        return Refusal{RefusalCode::too_few_data, "Fewer than three athletes do not make a roster.",
                       "athletes", std::to_string(data.athletes.size()), "3 or more"};
    if (std::none_of(data.athletes.begin(), data.athletes.end(), [&](const auto& a) { return days(a) > 1; }))
        return Refusal{RefusalCode::too_few_data,
                       "Nobody was tested on two days, so nothing within an athlete can be seen.", "days",
                       "1", "2 or more for some athletes"};
    return Done{};
}

std::vector<double> rows_of(const MatrixXd& m) { // symmetric, so columns are rows
    return {m.data(), m.data() + m.size()};
}

std::vector<double> numbers(const VectorXd& v) {
    return {v.data(), v.data() + v.size()};
}

// Slopes in the readings' units, and how much of each these records told.
struct Slopes {
    std::vector<Estimate> estimates;
    std::vector<double> learned;
};
Slopes slopes_of(const VectorXd& mode, const VectorXd& variance, const VectorXd& prior_sd,
                 const VectorXd& unit) {
    Slopes slopes;
    for (Index k = 0; k < mode.size(); ++k) {
        const double back = unit[0] / unit[k + 1];
        // A curvature flatter than the prior's is Laplace's fault: records do not make a slope less known.
        const double known = std::min(variance[k], prior_sd[k] * prior_sd[k]);
        slopes.estimates.push_back({mode[k] * back, std::sqrt(known) * back});
        slopes.learned.push_back(1 - known / (prior_sd[k] * prior_sd[k]));
    }
    return slopes;
}

RosterMode kept_mode(const RosterData& data, const FlatData& flat, const RosterScaling& scaling,
                     const JointMode& found, const SessionPosterior& sessions, const JointParameters& parts) {
    RosterMode mode{data.qualities,
                    data.covariates,
                    data.growths,
                    numbers(scaling.centre),
                    numbers(scaling.unit),
                    numbers(found.phi),
                    rows_of(found.model),
                    rows_of(found.curvature),
                    data.sessions,
                    {},
                    std::vector<double>(static_cast<std::size_t>(data.qualities), 0)};
    for (std::size_t s = 0; s < data.sessions.size(); ++s) {
        const auto at = static_cast<Index>(s);
        const double unit = scaling.unit[data.sessions[s]];
        mode.session.push_back({sessions.mean[at] * unit, std::sqrt(sessions.covariance(at, at)) * unit});
    }
    const auto& kinds = flat.shape.session_qualities;
    for (std::size_t k = 0; k < kinds.size(); ++k)
        mode.session_spread[static_cast<std::size_t>(kinds[k])] =
            std::sqrt(parts.session[static_cast<Index>(k)]) * scaling.unit[kinds[k]];
    return mode;
}

Refusal not_settled(const FlatData& flat) {
    return {RefusalCode::too_few_data,
            "No best fit was found: these records do not settle the model. More test days of the same "
            "athletes may.",
            "test days", std::to_string(flat.days.size()), "more"};
}

void describe_fit(const FlatData& flat, const JointMode& found, const NormalPriors& priors,
                  const RosterScaling& scaling, RosterFit& fit) {
    const JointShape& shape = flat.shape;
    const Index p = shape.predictors(), first = shape.growth_at();
    const VectorXd& unit = scaling.unit;
    MatrixXd covariance = Eigen::LLT<MatrixXd>(found.curvature)
                              .solve(MatrixXd::Identity(found.curvature.rows(), found.curvature.cols()));
    const Index within = shape.slope_at(shape.within_at(), 0),
                between = shape.slope_at(shape.between_at(), 0);
    covariance.block(within - first, within - first, p, p).diagonal().array() +=
        usual_own_spread * usual_own_spread / static_cast<double>(flat.athletes.size());
    const VectorXd variance = covariance.diagonal();
    const auto slopes = [&](Index at) {
        return slopes_of(found.phi.segment(at, p), variance.segment(at - first, p), priors.sd.segment(at, p),
                         unit);
    };
    const Slopes within_slopes = slopes(within), between_slopes = slopes(between);
    fit.within = within_slopes.estimates;
    fit.within_learned = within_slopes.learned;
    fit.between = between_slopes.estimates;
    fit.between_learned = between_slopes.learned;
    for (Index i = 0; i < p; ++i)
        for (Index j = 0; j < p; ++j)
            fit.within_covariance.push_back(covariance(within - first + i, within - first + j) * unit[0] *
                                            unit[0] / (unit[i + 1] * unit[j + 1]));
    for (Index k = 0; k < shape.qualities; ++k)
        for (Index g = 0; g < shape.growths; ++g) {
            const Index at = first + shape.qualities * g + k;
            fit.growth.push_back({found.phi[at] * unit[k], std::sqrt(variance[at - first]) * unit[k]});
        }
}

} // namespace

Result<RosterFit> fit_joint_model(const RosterData& data, const RosterPriors& given,
                                  const FitControl& control) {
    if (const auto checked = check_data(data); !checked)
        return checked.refusal();
    auto scaling = scaling_of(data);
    if (!scaling)
        return scaling.refusal();
    const JointShape shape = shape_of(data);
    const bool warm = control.from && starts_from(shape, *control.from);
    if (warm) // the numbers kept mean the same only in their own units
        for (Index k = 0; k < shape.qualities; ++k) {
            scaling->centre[k] = control.from->centre[static_cast<std::size_t>(k)];
            scaling->unit[k] = control.from->unit[static_cast<std::size_t>(k)];
        }
    const FlatData flat = flat_data(data, *scaling);
    const NormalPriors priors = inside_priors(shape, given, scaling->unit);
    const JointSearch search{flat, priors, control};
    const auto found = search.find(warm ? control.from : nullptr);
    if (!found)
        return found.refusal();
    const MatrixXd whitened = priors.sd.tail(found->curvature.rows()).asDiagonal() * found->curvature *
                              priors.sd.tail(found->curvature.rows()).asDiagonal();
    const double least =
        Eigen::SelfAdjointEigenSolver<MatrixXd>(whitened, Eigen::EigenvaluesOnly).eigenvalues()[0];
    if (!(found->gradient < fair_gradient) || !(least > 0))
        return not_settled(flat);

    RosterFit fit{};
    describe_fit(flat, *found, priors, *scaling, fit);
    const JointModelNow now = joint_model_now(shape, found->phi);
    const VectorXd drift = now.Q.diagonal().cwiseSqrt(), spread = now.S.diagonal().cwiseSqrt();
    for (Index k = 0; k < shape.qualities; ++k) {
        fit.error_sd.push_back(std::sqrt(now.parts.error[k]) * scaling->unit[k]);
        fit.drift_sd.push_back(drift[k] * scaling->unit[k]);
        fit.between_sd.push_back(spread[k] * scaling->unit[k]);
    }
    const SessionPosterior sessions = session_posterior(flat, now, control.run);
    fit.log_likelihood = sessions.log_likelihood;
    for (const auto& r : flat.readings)
        fit.log_likelihood -= std::log(scaling->unit[r.quality]);
    fit.readings = static_cast<int>(flat.readings.size());
    fit.gradient = found->gradient;
    fit.smallest_curvature = least;
    fit.evaluations = found->evaluations;
    fit.mode = kept_mode(data, flat, *scaling, *found, sessions, now.parts);
    return fit;
}

} // namespace amentum
