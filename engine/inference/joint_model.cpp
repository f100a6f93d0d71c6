#include "inference/joint_model.h"

#include "inference/inside/joint_likelihood.h"
#include "inference/inside/joint_priors.h"
#include "inference/inside/minimise.h"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace amentum {
namespace {

using Eigen::Index;
using Eigen::MatrixXd;
using Eigen::VectorXd;

constexpr double days_a_unit = 30;
constexpr double known_error_doubt = 0.4; // SD of the log of a variance known give or take a fifth
constexpr double fair_gradient = 1e-5;    // of the log posterior an athlete; larger: no mode

struct Scaling { // shown = centre + unit x inside
    VectorXd centre, unit;
};

Result<Scaling> scaling_of(const RosterData& data) {
    const Index d = data.qualities;
    VectorXd n = VectorXd::Zero(d), sum = VectorXd::Zero(d), squares = VectorXd::Zero(d);
    for (const auto& athlete : data.athletes)
        for (const auto& day : athlete.days)
            for (const auto& r : day.readings) {
                assert(r.quality >= 0 && r.quality < data.qualities);
                n[r.quality] += 1;
                sum[r.quality] += r.value;
            }
    for (Index k = 0; k < d; ++k)
        if (n[k] < 3)
            return Refusal{RefusalCode::too_few_data, "A quality has too few readings to be in the model.",
                           "quality " + std::to_string(k), std::to_string(static_cast<int>(n[k])),
                           "3 or more"};
    const VectorXd centre = sum.array() / n.array();
    for (const auto& athlete : data.athletes)
        for (const auto& day : athlete.days)
            for (const auto& r : day.readings)
                squares[r.quality] += std::pow(r.value - centre[r.quality], 2);
    const VectorXd unit = (squares.array() / n.array()).sqrt();
    for (Index k = 0; k < d; ++k)
        if (!(unit[k] > 1e-9 * (1 + std::abs(centre[k]))))
            return Refusal{RefusalCode::too_few_data, "A quality never varies, so nothing can go with it.",
                           "quality " + std::to_string(k), std::to_string(centre[k]), "readings that differ"};
    return Scaling{centre, unit};
}

FlatData flat_data(const RosterData& data, const Scaling& scaling) {
    FlatData flat{{data.qualities, data.covariates, data.growths}, {}, {}, {}};
    for (const auto& athlete : data.athletes) {
        assert(!athlete.days.empty() && static_cast<int>(athlete.covariates.size()) == data.covariates &&
               static_cast<int>(athlete.growth.size()) == data.growths);
        flat.athletes.push_back({flat.days.size(), athlete.days.size(),
                                 Eigen::Map<const VectorXd>(athlete.covariates.data(), data.covariates),
                                 Eigen::Map<const VectorXd>(athlete.growth.data(), data.growths)});
        for (std::size_t t = 0; t < athlete.days.size(); ++t) {
            const auto& day = athlete.days[t];
            const int gap = t == 0 ? 0 : day.day - athlete.days[t - 1].day;
            assert(t == 0 || gap > 0);
            flat.days.push_back({gap / days_a_unit, flat.readings.size(), day.readings.size()});
            for (const auto& r : day.readings)
                flat.readings.push_back(
                    {r.quality, (r.value - scaling.centre[r.quality]) / scaling.unit[r.quality], r.share});
        }
    }
    return flat;
}

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

VectorXd first_guess(const NormalPriors& priors) {
    return priors.mean;
}

// Log posterior an athlete, with its sign turned for the search.
struct Objective {
    const FlatData& data;
    const NormalPriors& priors;
    double scale;

    double operator()(const VectorXd& phi, VectorXd& gradient) const {
        VectorXd g;
        double value = joint_log_likelihood(data, phi, g);
        value += priors.add(phi, g);
        gradient = -scale * g;
        return -scale * value;
    }
};

// Curvature of the objective from `first` on, by differences of its gradient, which is 0 at the mode. Means and covariances
// of a normal model carry no information about each other in expectation, so the block of the covariances' numbers gives
// their errors by itself.
MatrixXd curvature_from(const Objective& objective, const Minimum& mode, Index first) {
    constexpr double step = 1e-5;
    const Index n = mode.x.size() - first;
    MatrixXd H(n, n);
    VectorXd gradient(mode.x.size());
    for (Index j = 0; j < n; ++j) {
        VectorXd moved = mode.x;
        moved[first + j] += step;
        objective(moved, gradient);
        H.col(j) = (gradient - mode.gradient).tail(n) / step;
    }
    return 0.5 * (H + H.transpose());
}

} // namespace

Result<RosterFit> fit_joint_model(const RosterData& data, const RosterPriors& given) {
    if (const auto checked = check_data(data); !checked)
        return checked.refusal();
    const auto scaling = scaling_of(data);
    if (!scaling)
        return scaling.refusal();
    const FlatData flat = flat_data(data, *scaling);
    const JointShape& shape = flat.shape;
    const Index p = shape.predictors();
    assert(static_cast<Index>(given.within.size()) == p && static_cast<Index>(given.between.size()) == p);
    const VectorXd& unit = scaling->unit;
    VectorXd wm(p), ws(p), bm(p), bs(p);
    for (Index k = 0; k < p; ++k) { // slopes: outcome's unit over the predictor's
        const double to_inside = unit[k + 1] / unit[0];
        const auto at = static_cast<std::size_t>(k);
        wm[k] = given.within[at].value * to_inside;
        ws[k] = given.within[at].standard_error * to_inside;
        bm[k] = given.between[at].value * to_inside;
        bs[k] = given.between[at].standard_error * to_inside;
    }
    NormalPriors priors = joint_priors(shape, wm, ws, bm, bs);
    assert(given.error_sd.empty() || static_cast<Index>(given.error_sd.size()) == shape.qualities);
    for (std::size_t k = 0; k < given.error_sd.size(); ++k) {
        const Index at = shape.errors_at() + static_cast<Index>(k);
        priors.mean[at] = 2 * std::log(given.error_sd[k] / unit[static_cast<Index>(k)]);
        priors.sd[at] = known_error_doubt;
    }
    const Objective objective{flat, priors, 1 / static_cast<double>(data.athletes.size())};

    Minimum mode = minimise(objective, first_guess(priors), {1e-9, 0.5, 1000});
    const Index first = shape.growth_at(); // growth and all covariances
    const MatrixXd H = curvature_from(objective, mode, first) / objective.scale;
    const VectorXd spread_before = priors.sd.tail(H.rows());
    const MatrixXd whitened = spread_before.asDiagonal() * H * spread_before.asDiagonal();
    const Eigen::SelfAdjointEigenSolver<MatrixXd> eigen(whitened);
    const double gradient = mode.gradient.cwiseAbs().maxCoeff();
    const double least = eigen.eigenvalues()[0];
    if (!(gradient < fair_gradient) || !(least > 0))
        return Refusal{
            RefusalCode::too_few_data,
            "No best fit was found: these records do not settle the model. More test days of the same "
            "athletes may.",
            "test days", std::to_string(flat.days.size()), "more"};
    const MatrixXd covariance = Eigen::LLT<MatrixXd>(H).solve(MatrixXd::Identity(H.rows(), H.rows()));
    const auto variance_of = [&](Index at) { return covariance(at - first, at - first); };
    const JointParameters parts = joint_parameters(shape, mode.x);
    const VectorXd drift = parts.within.whole().diagonal().cwiseSqrt();
    const VectorXd spread = parts.between.whole().diagonal().cwiseSqrt();

    RosterFit fit{};
    const auto add = [&](Index covariance_at, std::vector<Estimate>& slopes, std::vector<double>& learned,
                         const VectorXd& prior_sd) {
        for (Index k = 0; k < p; ++k) {
            const Index at = shape.slope_at(covariance_at, k);
            const double back = unit[0] / unit[k + 1];
            slopes.push_back({mode.x[at] * back, std::sqrt(variance_of(at)) * back});
            learned.push_back(1 - variance_of(at) / (prior_sd[k] * prior_sd[k]));
        }
    };
    add(shape.within_at(), fit.within, fit.within_learned, ws);
    add(shape.between_at(), fit.between, fit.between_learned, bs);
    for (Index k = 0; k < shape.qualities; ++k) {
        fit.error_sd.push_back(std::sqrt(parts.error[k]) * unit[k]);
        fit.drift_sd.push_back(drift[k] * unit[k]);
        fit.between_sd.push_back(spread[k] * unit[k]);
    }
    for (Index k = 0; k < shape.qualities; ++k)
        for (Index g = 0; g < shape.growths; ++g) {
            const Index at = shape.growth_at() + shape.qualities * g + k;
            fit.growth.push_back({mode.x[at] * unit[k], std::sqrt(variance_of(at)) * unit[k]});
        }
    VectorXd unused;
    fit.log_likelihood = joint_log_likelihood(flat, mode.x, unused);
    for (const auto& r : flat.readings)
        fit.log_likelihood -= std::log(unit[r.quality]);
    fit.readings = static_cast<int>(flat.readings.size());
    fit.gradient = gradient;
    fit.smallest_curvature = least;
    fit.evaluations = mode.evaluations;
    return fit;
}

} // namespace amentum
