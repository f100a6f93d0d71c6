#include "inference/mixed_model.h"

#include "inference/inside/minimise.h"
#include "inference/inside/mixed_criterion.h"

namespace amentum {
namespace {

using Eigen::Index;
using Eigen::MatrixXd;
using Eigen::VectorXd;

constexpr double small_gradient = 1e-10; // of the criterion a group: its curvatures are then near 1
constexpr double fair_gradient = 1e-5;   // larger: no fit

// The free numbers of Lambda and tau, in a row.
struct Layout {
    Index q;
    RandomShape shape;
    Index factors; // crossed

    Index size() const { return (shape == RandomShape::diagonal ? q : q * (q + 1) / 2) + factors; }
    template <class Do>
    void each(Do act) const { // act(row, column, place)
        Index place = 0;
        for (Index i = 0; i < q; ++i)
            for (Index j = shape == RandomShape::diagonal ? i : 0; j <= i; ++j)
                act(i, j, place++);
    }
    MatrixXd Lambda(const VectorXd& x) const {
        MatrixXd L = MatrixXd::Zero(q, q);
        each([&](Index i, Index j, Index k) { L(i, j) = x[k]; });
        return L;
    }
    VectorXd tau(const VectorXd& x) const { return x.tail(factors); }
    VectorXd start() const {
        VectorXd x = VectorXd::Zero(size());
        each([&](Index i, Index j, Index k) { x[k] = i == j ? 1 : 0; });
        x.tail(factors).setOnes();
        return x;
    }
};

Result<Done> check_rows(const MixedStatistics& all) {
    const auto refuse = [](std::string sentence, std::string given, std::string allowed) {
        return Refusal{RefusalCode::too_few_data, std::move(sentence), "rows", std::move(given),
                       std::move(allowed)};
    };
    if (all.n < all.p + 2)
        return refuse("There are fewer rows than the model has numbers to find.", std::to_string(all.n),
                      std::to_string(all.p + 2) + " or more");
    if (all.groups.size() < 2)
        return refuse("One group alone cannot show how groups differ.", std::to_string(all.groups.size()),
                      "2 groups or more");
    const MatrixXd XX = all.XyXy.topLeftCorner(all.p, all.p);
    const VectorXd scale = XX.diagonal().cwiseSqrt().cwiseInverse();
    if (!scale.allFinite())
        return refuse("A column of the predictors is all zero.", "", "columns that vary");
    const MatrixXd scaled = scale.asDiagonal() * XX * scale.asDiagonal();
    if (Eigen::SelfAdjointEigenSolver<MatrixXd>(scaled).eigenvalues()[0] < 1e-11)
        return refuse("Two columns of the predictors say the same, so their effects cannot be told apart.",
                      "", "columns of which none is made of the others");
    return Done{};
}

} // namespace

Result<MixedFit> fit_mixed_model(const MixedRows& rows, RandomShape shape, Likelihood likelihood) {
    const MixedStatistics all = gather_statistics(rows);
    if (const auto checked = check_rows(all); !checked)
        return checked.refusal();
    const Layout layout{all.q, shape, all.factors()};
    const double scale = 1 / static_cast<double>(all.groups.size());
    const auto criterion = [&](const VectorXd& x, VectorXd& gradient) {
        const MatrixXd Lambda = layout.Lambda(x);
        const MixedPoint point = mixed_criterion(all, Lambda, layout.tau(x), likelihood);
        const MatrixXd to_Lambda = 2 * point.to_covariance * Lambda;
        layout.each([&](Index i, Index j, Index k) { gradient[k] = scale * to_Lambda(i, j); });
        gradient.tail(layout.factors) = scale * point.to_crossed;
        return scale * point.criterion;
    };
    const Minimum best = minimise(criterion, layout.start(), {small_gradient, 0.5, 400});
    const double left = best.gradient.cwiseAbs().maxCoeff();
    if (!(left < fair_gradient))
        return Refusal{RefusalCode::too_few_data, "No best fit was found for these rows.", "rows",
                       std::to_string(all.n), "more rows, or a simpler model"};

    const MatrixXd Lambda = layout.Lambda(best.x);
    const MixedPoint point = mixed_criterion(all, Lambda, layout.tau(best.x), likelihood);
    const double freedom = static_cast<double>(likelihood == Likelihood::restricted ? all.n - all.p : all.n);
    const double variance = point.residual_sum / freedom;
    const MatrixXd covariance = variance * Lambda * Lambda.transpose();
    const MatrixXd effects = point.scores * Lambda * Lambda.transpose();
    MixedFit fit{{point.beta.begin(), point.beta.end()},
                 {},
                 {},
                 {},
                 variance,
                 point.criterion,
                 {},
                 {},
                 left,
                 best.evaluations};
    for (Index j = 0; j < all.p; ++j)
        fit.standard_error.push_back(std::sqrt(variance * point.inverse(j, j)));
    for (Index i = 0; i < all.q; ++i) {
        fit.at_zero.push_back(covariance(i, i) < 1e-8 * variance);
        for (Index j = 0; j < all.q; ++j)
            fit.covariance.push_back(covariance(i, j));
    }
    for (const double tau : layout.tau(best.x)) {
        fit.crossed_variance.push_back(variance * tau * tau);
        fit.at_zero.push_back(fit.crossed_variance.back() < 1e-8 * variance);
    }
    for (Index g = 0; g < effects.rows(); ++g)
        for (Index k = 0; k < all.q; ++k)
            fit.group_effects.push_back(effects(g, k));
    return fit;
}

} // namespace amentum
