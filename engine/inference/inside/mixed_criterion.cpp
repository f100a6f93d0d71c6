#include "inference/inside/mixed_criterion.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace amentum {
namespace {

using Eigen::Index;
using Eigen::MatrixXd;
using Eigen::VectorXd;

// Of one group, V_0 = I + Z Lambda Lambda' Z' without crossed factors.
struct GroupPass {
    MatrixXd ZVZ;  // Z'V_0^-1 Z
    MatrixXd ZVXy; // Z'V_0^-1 [X y]
    MatrixXd ZVS;  // Z'V_0^-1 S, levels of the group
    MatrixXd WXy;  // L^-1 Lambda' Z'[X y]
    MatrixXd WS;
    double log_determinant;
};

GroupPass pass_group(const GroupStatistics& group, const MatrixXd& Lambda) {
    const MatrixXd T = group.ZZ * Lambda;
    MatrixXd M = Lambda.transpose() * T;
    M.diagonal().array() += 1;
    const Eigen::LLT<MatrixXd> L(M);
    const MatrixXd U = L.matrixL().solve(T.transpose());
    GroupPass pass;
    pass.WXy = L.matrixL().solve(Lambda.transpose() * group.ZXy);
    pass.ZVZ = group.ZZ - U.transpose() * U;
    pass.ZVXy = group.ZXy - U.transpose() * pass.WXy;
    if (!group.levels.empty()) {
        pass.WS = L.matrixL().solve(Lambda.transpose() * group.ZS);
        pass.ZVS = group.ZS - U.transpose() * pass.WS;
    }
    pass.log_determinant = 2 * L.matrixLLT().diagonal().array().log().sum();
    return pass;
}

// The inverse of L L' by blocks, a third of the work of two triangular solves: what is known to be 0 is not multiplied.
MatrixXd inverse_of(const Eigen::LLT<MatrixXd>& factor) {
    constexpr Index block = 64;
    const Index n = factor.rows();
    MatrixXd L_inverse = MatrixXd::Identity(n, n), inverse(n, n);
    const auto& L = factor.matrixLLT();
    for (Index j = 0; j < n; j += block) {
        auto columns = L_inverse.block(j, j, n - j, std::min(block, n - j));
        L.bottomRightCorner(n - j, n - j).triangularView<Eigen::Lower>().solveInPlace(columns);
    }
    for (Index j = 0; j < n; j += block) {
        const Index many = std::min(block, n - j);
        inverse.block(j, 0, many, j + many).noalias() =
            L_inverse.block(j, j, n - j, many).transpose() * L_inverse.block(j, 0, n - j, j + many);
    }
    inverse.triangularView<Eigen::StrictlyUpper>() = inverse.transpose();
    return inverse;
}

// Levels of the factors crossed with groups: V = V_0 + S T^2 S', T diagonal. With K = S'V_0^-1 S and Q = I + T K T,
// S'V^-1 S T = K T Q^-1, without dividing by a tau that may be 0.
struct CrossedPass {
    VectorXd T; // tau of each level's factor
    MatrixXd K;
    MatrixXd KXy;       // S'V_0^-1 [X y]
    MatrixXd Q_inverse; // Q^-1
    MatrixXd H;         // T Q^-1 T KXy
    MatrixXd F;         // S'V^-1 [X y] = KXy - K H
    double log_determinant = 0;
};

CrossedPass pass_crossed(const MixedStatistics& all, const std::vector<GroupPass>& passes,
                         const VectorXd& tau) {
    CrossedPass c{VectorXd(all.levels()), all.SS, all.SXy, {}, {}, {}};
    for (Index f = 0; f < all.factors(); ++f) {
        const Index first = all.first_level[static_cast<std::size_t>(f)];
        c.T.segment(first, all.first_level[static_cast<std::size_t>(f) + 1] - first).setConstant(tau[f]);
    }
    for (std::size_t g = 0; g < passes.size(); ++g) {
        const auto& levels = all.groups[g].levels;
        const MatrixXd WW = passes[g].WS.transpose() * passes[g].WS;
        const MatrixXd WXy = passes[g].WS.transpose() * passes[g].WXy;
        for (std::size_t i = 0; i < levels.size(); ++i) {
            c.KXy.row(levels[i]) -= WXy.row(static_cast<Index>(i));
            for (std::size_t j = 0; j < levels.size(); ++j)
                if (levels[j] >= levels[i])
                    c.K(levels[j], levels[i]) -= WW(static_cast<Index>(j), static_cast<Index>(i));
        }
    }
    c.K.triangularView<Eigen::StrictlyUpper>() = c.K.transpose();
    MatrixXd Q = c.T.asDiagonal() * c.K * c.T.asDiagonal();
    Q.diagonal().array() += 1;
    const Eigen::LLT<MatrixXd> L(Q);
    c.log_determinant = 2 * L.matrixLLT().diagonal().array().log().sum();
    c.Q_inverse = inverse_of(L);
    c.H = c.T.asDiagonal() * (c.Q_inverse * (c.T.asDiagonal() * c.KXy));
    c.F = c.KXy - c.K * c.H;
    return c;
}

// Takes from a group's passes what the crossed factors explain.
void take_crossed(GroupPass& pass, const std::vector<int>& levels, const CrossedPass& crossed) {
    const MatrixXd ZVST = pass.ZVS * crossed.T(levels).asDiagonal();
    const MatrixXd Qii = crossed.Q_inverse(levels, levels);
    pass.ZVZ.noalias() -= ZVST * Qii * ZVST.transpose();
    const MatrixXd Hi = crossed.H(levels, Eigen::all);
    pass.ZVXy.noalias() -= pass.ZVS * Hi;
}

// Of each factor, d log|V| / d tau less what the fit explains; `inverse` is (X'V^-1 X)^-1, empty for full likelihood.
VectorXd slopes_to_crossed(const MixedStatistics& all, const CrossedPass& crossed, const VectorXd& tau,
                           const VectorXd& residual, double weight, const MatrixXd& inverse) {
    const MatrixXd FX = crossed.F.leftCols(all.p);
    const VectorXd explained =
        inverse.size() > 0
            ? VectorXd(weight * residual.cwiseAbs2() + (FX * inverse).cwiseProduct(FX).rowwise().sum())
            : VectorXd(weight * residual.cwiseAbs2());
    const VectorXd of_level = crossed.K.cwiseProduct(crossed.Q_inverse) * crossed.T;
    VectorXd slopes(all.factors());
    for (Index f = 0; f < all.factors(); ++f) {
        const Index first = all.first_level[static_cast<std::size_t>(f)];
        const Index many = all.first_level[static_cast<std::size_t>(f) + 1] - first;
        slopes[f] = 2 * (of_level.segment(first, many).sum() - tau[f] * explained.segment(first, many).sum());
    }
    return slopes;
}

} // namespace

MixedPoint mixed_criterion(const MixedStatistics& all, const MatrixXd& Lambda, const VectorXd& tau,
                           Likelihood likelihood) {
    const Index p = all.p, q = all.q;
    const bool restricted = likelihood == Likelihood::restricted;
    std::vector<GroupPass> passes;
    passes.reserve(all.groups.size());
    MatrixXd C = all.XyXy;
    double log_determinant = -all.log_weights;
    for (const auto& group : all.groups) {
        passes.push_back(pass_group(group, Lambda));
        C.noalias() -= passes.back().WXy.transpose() * passes.back().WXy;
        log_determinant += passes.back().log_determinant;
    }
    CrossedPass crossed;
    if (all.factors() > 0) {
        crossed = pass_crossed(all, passes, tau);
        C.noalias() -= crossed.KXy.transpose() * crossed.H;
        log_determinant += crossed.log_determinant;
    }
    const Eigen::LLT<MatrixXd> R(C.topLeftCorner(p, p));
    MixedPoint point{std::numeric_limits<double>::infinity(),
                     MatrixXd::Zero(q, q),
                     VectorXd::Zero(all.factors()),
                     VectorXd::Zero(p),
                     {},
                     0,
                     MatrixXd::Zero(static_cast<Index>(all.groups.size()), q)};
    if (R.info() != Eigen::Success)
        return point;
    point.beta = R.solve(C.topRightCorner(p, 1));
    point.inverse = R.solve(MatrixXd::Identity(p, p));
    point.residual_sum = C(p, p) - point.beta.dot(C.topRightCorner(p, 1).col(0));
    const double freedom = static_cast<double>(restricted ? all.n - p : all.n);
    point.criterion =
        log_determinant + freedom * (1 + std::log(2 * std::numbers::pi * point.residual_sum / freedom));
    if (restricted)
        point.criterion += 2 * R.matrixLLT().diagonal().array().log().sum();

    const double weight = freedom / point.residual_sum;
    VectorXd with_y(p + 1); // [X y] with_y = y - X beta
    with_y.head(p) = -point.beta;
    with_y[p] = 1;
    for (std::size_t g = 0; g < passes.size(); ++g) {
        GroupPass& pass = passes[g];
        if (all.factors() > 0)
            take_crossed(pass, all.groups[g].levels, crossed);
        const VectorXd u = pass.ZVXy * with_y;
        point.scores.row(static_cast<Index>(g)) = u;
        point.to_covariance += pass.ZVZ - weight * u * u.transpose();
        if (restricted)
            point.to_covariance -= pass.ZVXy.leftCols(p) * point.inverse * pass.ZVXy.leftCols(p).transpose();
    }
    if (all.factors() > 0)
        point.to_crossed = slopes_to_crossed(all, crossed, tau, crossed.F * with_y, weight,
                                             restricted ? point.inverse : MatrixXd());
    return point;
}

} // namespace amentum
