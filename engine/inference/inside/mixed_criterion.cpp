#include "inference/inside/mixed_criterion.h"

#include <cmath>
#include <limits>
#include <numbers>

namespace amentum {
namespace {

using Eigen::Index;
using Eigen::MatrixXd;
using Eigen::VectorXd;

// Of one group, V_0 = I + Z Lambda Lambda' Z' without sessions.
struct GroupPass {
    MatrixXd ZVZ;  // Z'V_0^-1 Z
    MatrixXd ZVXy; // Z'V_0^-1 [X y]
    MatrixXd ZVS;  // Z'V_0^-1 S, sessions of the group
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
    if (group.Zs.cols() > 0) {
        pass.WS = L.matrixL().solve(Lambda.transpose() * group.Zs);
        pass.ZVS = group.Zs - U.transpose() * pass.WS;
    }
    pass.log_determinant = 2 * L.matrixLLT().diagonal().array().log().sum();
    return pass;
}

// Sessions crossed with groups: K = S'V_0^-1 S and S'V_0^-1 [X y].
struct SessionPass {
    MatrixXd K;
    MatrixXd KXy;
    MatrixXd Q_inverse; // (I + tau^2 K)^-1
    MatrixXd F;         // S'V^-1 [X y] = Q^-1 KXy
    double log_determinant = 0;
};

SessionPass pass_sessions(const MixedStatistics& all, const std::vector<GroupPass>& passes, double tau) {
    SessionPass s{all.rows_of_session.asDiagonal().toDenseMatrix(), all.SXy, {}, {}};
    for (std::size_t g = 0; g < passes.size(); ++g) {
        const auto& numbers = all.groups[g].sessions;
        const MatrixXd WW = passes[g].WS.transpose() * passes[g].WS;
        const MatrixXd WXy = passes[g].WS.transpose() * passes[g].WXy;
        for (std::size_t i = 0; i < numbers.size(); ++i) {
            s.KXy.row(numbers[i]) -= WXy.row(static_cast<Index>(i));
            for (std::size_t j = 0; j < numbers.size(); ++j)
                s.K(numbers[i], numbers[j]) -= WW(static_cast<Index>(i), static_cast<Index>(j));
        }
    }
    MatrixXd Q = tau * tau * s.K;
    Q.diagonal().array() += 1;
    const Eigen::LLT<MatrixXd> L(Q);
    s.log_determinant = 2 * L.matrixLLT().diagonal().array().log().sum();
    s.Q_inverse = L.solve(MatrixXd::Identity(all.crossed, all.crossed));
    s.F = s.Q_inverse * s.KXy;
    return s;
}

} // namespace

MixedPoint mixed_criterion(const MixedStatistics& all, const MatrixXd& Lambda, double tau,
                           Likelihood likelihood) {
    const Index p = all.p, q = all.q;
    const bool restricted = likelihood == Likelihood::restricted;
    std::vector<GroupPass> passes;
    passes.reserve(all.groups.size());
    MatrixXd C = all.XyXy;
    double log_determinant = 0;
    for (const auto& group : all.groups) {
        passes.push_back(pass_group(group, Lambda));
        C.noalias() -= passes.back().WXy.transpose() * passes.back().WXy;
        log_determinant += passes.back().log_determinant;
    }
    SessionPass sessions;
    if (all.crossed > 0) {
        sessions = pass_sessions(all, passes, tau);
        C.noalias() -= tau * tau * sessions.KXy.transpose() * sessions.F;
        log_determinant += sessions.log_determinant;
    }
    const Eigen::LLT<MatrixXd> R(C.topLeftCorner(p, p));
    MixedPoint point{std::numeric_limits<double>::infinity(),
                     MatrixXd::Zero(q, q),
                     0,
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
        auto& [ZVZ, ZVXy, ZVS, WXy, WS, unused] = passes[g];
        const auto& numbers = all.groups[g].sessions;
        if (!numbers.empty()) {
            const MatrixXd Qii = sessions.Q_inverse(numbers, numbers);
            ZVZ.noalias() -= tau * tau * ZVS * Qii * ZVS.transpose();
            ZVXy.noalias() -= tau * tau * ZVS * sessions.F(numbers, Eigen::all);
        }
        const VectorXd u = ZVXy * with_y;
        point.scores.row(static_cast<Index>(g)) = u;
        point.to_covariance += ZVZ - weight * u * u.transpose();
        if (restricted)
            point.to_covariance -= ZVXy.leftCols(p) * point.inverse * ZVXy.leftCols(p).transpose();
    }
    if (all.crossed > 0) {
        const MatrixXd FX = sessions.F.leftCols(p);
        point.to_session =
            (sessions.K * sessions.Q_inverse).trace() - weight * (sessions.F * with_y).squaredNorm();
        if (restricted)
            point.to_session -= (FX * point.inverse * FX.transpose()).trace();
    }
    return point;
}

} // namespace amentum
