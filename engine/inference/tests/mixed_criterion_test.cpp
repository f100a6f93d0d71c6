// The criterion of a mixed model against dense algebra that follows its formula word for word (V built whole, inverted,
// its determinant taken), and its gradient against central differences: groups with two random effects, two crossed
// factors, weights, nothing balanced.
#include "inference/inside/mixed_criterion.h"
#include "inference/random_stream.h"

#include <doctest/doctest.h>

#include <cmath>
#include <numbers>

using namespace amentum;
using Eigen::Index;
using Eigen::MatrixXd;
using Eigen::VectorXd;

namespace {

constexpr int fixed = 3, random_effects = 2;

MixedRows unbalanced_rows() {
    RandomStream stream(7);
    MixedRows rows{fixed, random_effects, {}, {}, {}, {}, {{}, {}}};
    for (int i = 0; i < 60; ++i) {
        const double x = stream.next_normal(), z = stream.next_normal();
        rows.X.insert(rows.X.end(), {1, x, z});
        rows.Z.insert(rows.Z.end(), {1, x});
        rows.group.push_back(static_cast<int>(9 * std::pow(stream.next_uniform(), 2)));
        rows.crossed[0].push_back(static_cast<int>(7 * stream.next_uniform()));
        rows.crossed[1].push_back(i % 4);
        rows.weight.push_back(0.5 + 2 * stream.next_uniform());
        rows.y.push_back(10 + x + rows.group.back() - 0.5 * rows.crossed[0].back() + stream.next_normal());
    }
    return rows;
}

MatrixXd indicators(const std::vector<int>& level) {
    MatrixXd S = MatrixXd::Zero(static_cast<Index>(level.size()), 20);
    for (std::size_t i = 0; i < level.size(); ++i)
        S(static_cast<Index>(i), level[i]) = 1;
    return S;
}

double dense_criterion(const MixedRows& rows, const MatrixXd& Lambda, const VectorXd& tau,
                       Likelihood likelihood) {
    const Index n = static_cast<Index>(rows.y.size());
    using RowMajor = Eigen::Matrix<double, Eigen::Dynamic, Eigen::Dynamic, Eigen::RowMajor>;
    const MatrixXd X = Eigen::Map<const RowMajor>(rows.X.data(), n, fixed);
    const MatrixXd Z = Eigen::Map<const RowMajor>(rows.Z.data(), n, random_effects);
    const VectorXd y = Eigen::Map<const VectorXd>(rows.y.data(), n);
    MatrixXd V = MatrixXd::Zero(n, n);
    const MatrixXd G = indicators(rows.group);
    V += (Z * Lambda * Lambda.transpose() * Z.transpose()).cwiseProduct(G * G.transpose());
    for (std::size_t f = 0; f < rows.crossed.size(); ++f) {
        const MatrixXd S = indicators(rows.crossed[f]);
        V += std::pow(tau[static_cast<Index>(f)], 2) * S * S.transpose();
    }
    for (Index i = 0; i < n; ++i)
        V(i, i) += 1 / rows.weight[static_cast<std::size_t>(i)];
    const MatrixXd V_inverse = V.inverse();
    const MatrixXd XVX = X.transpose() * V_inverse * X;
    const VectorXd beta = XVX.inverse() * X.transpose() * V_inverse * y;
    const VectorXd residual = y - X * beta;
    const bool restricted = likelihood == Likelihood::restricted;
    const double freedom = static_cast<double>(restricted ? n - fixed : n);
    const double squares = residual.dot(V_inverse * residual);
    return std::log(V.determinant()) + (restricted ? std::log(XVX.determinant()) : 0) +
           freedom * (1 + std::log(2 * std::numbers::pi * squares / freedom));
}

// Free numbers in a row: Lambda(0,0), (1,0), (1,1), tau of both factors.
MatrixXd Lambda_of(const VectorXd& x) {
    MatrixXd Lambda = MatrixXd::Zero(2, 2);
    Lambda(0, 0) = x[0];
    Lambda(1, 0) = x[1];
    Lambda(1, 1) = x[2];
    return Lambda;
}

std::vector<VectorXd> points() {
    std::vector<VectorXd> all(3, VectorXd(5));
    all[0] << 1, 0, 1, 1, 1;
    all[1] << 0.7, -0.3, 0.4, 0.8, 1.6;
    all[2] << 1.2, 0.5, 0.3, 0.9, 0; // one factor without any variance
    return all;
}

} // namespace

TEST_CASE("the criterion of a mixed model is that of dense algebra") {
    const MixedRows rows = unbalanced_rows();
    const MixedStatistics all = gather_statistics(rows);
    for (const auto likelihood : {Likelihood::restricted, Likelihood::full})
        for (const VectorXd& x : points()) {
            const auto point = mixed_criterion(all, Lambda_of(x), x.tail(2), likelihood);
            CHECK(std::abs(point.criterion - dense_criterion(rows, Lambda_of(x), x.tail(2), likelihood)) <
                  1e-9);
        }
}

TEST_CASE("its gradient is that of central differences of the dense criterion") {
    const MixedRows rows = unbalanced_rows();
    const MixedStatistics all = gather_statistics(rows);
    for (const auto likelihood : {Likelihood::restricted, Likelihood::full})
        for (const VectorXd& x : points()) {
            const auto point = mixed_criterion(all, Lambda_of(x), x.tail(2), likelihood);
            const MatrixXd to_Lambda = 2 * point.to_covariance * Lambda_of(x);
            VectorXd gradient(5);
            gradient << to_Lambda(0, 0), to_Lambda(1, 0), to_Lambda(1, 1), point.to_crossed;
            for (Index k = 0; k < 5; ++k) {
                CAPTURE(k);
                VectorXd up = x, down = x;
                up[k] += 1e-5;
                down[k] -= 1e-5;
                const double slope = (dense_criterion(rows, Lambda_of(up), up.tail(2), likelihood) -
                                      dense_criterion(rows, Lambda_of(down), down.tail(2), likelihood)) /
                                     2e-5;
                CHECK(std::abs(gradient[k] - slope) < 1e-6 * (1 + std::abs(slope)));
            }
        }
}
