// Draws by Hamiltonian Monte Carlo against densities whose moments are known in closed form, and against densities that must
// raise the alarm. A mean is met when it lies within four of its Monte Carlo standard errors (chain_checks.h, itself held
// against R in samplers_of_r_test.cpp): a right sampler misses one in 16,000 so; seeds are fixed.
#include "inference/inside/chain_checks.h"
#include "inference/inside/hamiltonian.h"

#include <doctest/doctest.h>

#include <cmath>
#include <thread>
#include <vector>

using namespace amentum;
using Eigen::Index;
using Eigen::MatrixXd;
using Eigen::VectorXd;

namespace {

void check_mean(const VectorXd& draws, int chains, double expected) {
    const ChainCheck check = check_chains(draws, chains);
    CAPTURE(check.mean);
    CAPTURE(check.error);
    CAPTURE(expected);
    CHECK(std::abs(check.mean - expected) < 4 * check.error);
    CHECK(check.r_hat < 1.01);
}

// Normal with means 1 ... n, variances as given and one correlation.
struct NormalTarget {
    VectorXd mean;
    MatrixXd covariance, inverse;

    NormalTarget(const VectorXd& sd, double correlation)
        : mean(VectorXd::LinSpaced(sd.size(), 1, static_cast<double>(sd.size()))) {
        covariance = correlation * sd * sd.transpose();
        covariance.diagonal() = sd.cwiseAbs2();
        inverse = covariance.inverse();
    }
    double operator()(const VectorXd& x, VectorXd& gradient) const {
        gradient = -inverse * (x - mean);
        return 0.5 * gradient.dot(x - mean);
    }
};

// v ~ N(0, 9), nine numbers ~ N(0, e^v) [Neal2003].
double funnel(const VectorXd& x, VectorXd& gradient) {
    const double v = x[0], squares = x.tail(9).squaredNorm() * std::exp(-v);
    gradient = -x * std::exp(-v);
    gradient[0] = -v / 9 - 4.5 + squares / 2;
    return -v * v / 18 - 4.5 * v - squares / 2;
}

Draws draws_of(const LogDensity& f, Index n, const HamiltonianOptions& options) {
    return draw_hamiltonian(f, VectorXd::Zero(n), MatrixXd::Identity(n, n), options);
}

} // namespace

TEST_CASE("a normal density is met although the whitening is a fifth off and not centred") {
    const NormalTarget target(VectorXd::LinSpaced(6, 0.5, 3), 0.6);
    const MatrixXd factor = 0.8 * MatrixXd(target.covariance.llt().matrixL());
    HamiltonianOptions options;
    options.kept = 1000;
    const Draws draws = draw_hamiltonian(target, 0.7 * target.mean, factor, options);
    CHECK(draws.divergences == 0);
    CHECK(std::abs(draws.acceptance - options.acceptance) < 0.05);
    for (Index k = 0; k < 6; ++k) {
        const VectorXd x = draws.values.row(k);
        check_mean(x, draws.chains, target.mean[k]);
        check_mean((x.array() - target.mean[k]).square(), draws.chains, target.covariance(k, k));
    }
    const VectorXd first = draws.values.row(0).array() - target.mean[0];
    const VectorXd last = draws.values.row(5).array() - target.mean[5];
    check_mean(first.cwiseProduct(last), draws.chains, target.covariance(0, 5));
    VectorXd gradient(6);
    CHECK(draws.log_density[77] == target(draws.values.col(77), gradient));
}

TEST_CASE("a skewed density is met: the logarithm of a gamma number") {
    // e^x ~ Gamma(3): E x = psi(3) = 0.9227843351, var x = psi'(3) = 0.3949340668 [AbramowitzStegun, table 6.1]
    const LogDensity f = [](const VectorXd& x, VectorXd& gradient) {
        gradient = 3 - x.array().exp();
        return 3 * x.sum() - x.array().exp().sum();
    };
    HamiltonianOptions options;
    options.kept = 2000;
    const Draws draws = draws_of(f, 3, options);
    for (Index k = 0; k < 3; ++k) {
        const VectorXd x = draws.values.row(k);
        check_mean(x, draws.chains, 0.9227843351);
        check_mean((x.array() - 0.9227843351).square(), draws.chains, 0.3949340668);
    }
}

TEST_CASE("a hundred numbers near normal: most draws are worth a draw of their own") {
    const NormalTarget target(VectorXd::LinSpaced(100, 0.9, 1.1), 0);
    const Draws draws = draw_hamiltonian(target, target.mean, MatrixXd::Identity(100, 100));
    double least = 1e9, least_square = 1e9, r_hat = 0;
    for (Index k = 0; k < 100; ++k) {
        const VectorXd x = draws.values.row(k).array() - target.mean[k];
        const ChainCheck check = check_chains(x, draws.chains);
        least = std::min(least, check.bulk_size);
        least_square = std::min(least_square, check_chains(x.cwiseAbs2(), draws.chains).bulk_size);
        r_hat = std::max(r_hat, check.r_hat);
    }
    INFO("of 1600 draws: size " << least << ", of squares " << least_square << ", R-hat " << r_hat
                                << ", step " << draws.step << ", acceptance " << draws.acceptance
                                << ", gradients " << draws.gradients);
    CHECK(least > 700);
    CHECK(least_square > 800);
    CHECK(r_hat < 1.02); // the worst of a hundred
}

TEST_CASE("a funnel raises the alarm") {
    HamiltonianOptions options;
    options.kept = 1000;
    const Draws draws = draws_of(funnel, 10, options);
    const ChainCheck check = check_chains(draws.values.row(0), draws.chains);
    INFO("divergences " << draws.divergences << ", R-hat " << check.r_hat << ", bulk " << check.bulk_size);
    CHECK(draws.divergences > 0);
    CHECK(check.r_hat > 1.01);
    CHECK(check.bulk_size < 400);
}

TEST_CASE("two hills far apart raise the alarm") {
    // Half N(-6, 1), half N(6, 1).
    const LogDensity f = [](const VectorXd& x, VectorXd& gradient) {
        const double pull = 6 * std::tanh(6 * x[0]);
        gradient = VectorXd::Constant(1, pull - x[0]);
        return -0.5 * x[0] * x[0] + std::abs(6 * x[0]) + std::log1p(std::exp(-std::abs(12 * x[0])));
    };
    CHECK(check_chains(draws_of(f, 1, {}).values.row(0), 4).r_hat > 1.1);
}

TEST_CASE("a density with an edge: paths that leave it are counted") {
    const LogDensity f = [](const VectorXd& x, VectorXd& gradient) {
        gradient = VectorXd::Constant(1, -1);
        return x[0] > -1 ? -x[0] : -std::numeric_limits<double>::infinity();
    };
    const Draws draws = draws_of(f, 1, {});
    CHECK(draws.divergences > 0);
    CHECK(draws.values.minCoeff() > -1);
}

TEST_CASE("the same draws in any order of chains, other draws from another seed") {
    const NormalTarget target(VectorXd::LinSpaced(3, 1, 2), 0.2);
    HamiltonianOptions options{3, 50, 40, 4, 0.9, 5, {}, {}};
    const Draws forward = draws_of(target, 3, options);
    options.run = [](std::size_t parts, const std::function<void(std::size_t)>& part) {
        for (std::size_t i = parts; i-- > 0;)
            part(i);
    };
    const Draws backward = draws_of(target, 3, options);
    CHECK(forward.values == backward.values);
    CHECK(forward.gradients == backward.gradients);
    options.run = [](std::size_t parts, const std::function<void(std::size_t)>& part) {
        std::vector<std::jthread> threads;
        for (std::size_t i = 0; i < parts; ++i)
            threads.emplace_back(part, i);
    };
    CHECK(forward.values == draws_of(target, 3, options).values);
    options.chains = 2; // a chain does not know of the others
    CHECK(draws_of(target, 3, options).values == forward.values.leftCols(80));
    options.seed = 6;
    CHECK(!(draws_of(target, 3, options).values == forward.values.leftCols(80)));
    CHECK(!(forward.values.leftCols(40) == forward.values.middleCols(40, 40)));
}

TEST_CASE("stopped by the caller: nothing is kept") {
    const NormalTarget target(VectorXd::Ones(2), 0);
    double told = -1;
    HamiltonianOptions options;
    options.going = [&](double share) {
        CHECK(share > told);
        told = share;
        return share < 0.5;
    };
    const Draws draws = draws_of(target, 2, options);
    CHECK(draws.stopped);
    CHECK(draws.values.cols() == 0);
    CHECK(told >= 0.5);
    CHECK(told < 0.6);
}
