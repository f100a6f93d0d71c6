// Eight schools [Rubin1981; Gelman2013, section 5.5; data from memory]: by Hamiltonian Monte Carlo, and by weighted draws around
// the mode, against values by quadrature of another program and by the quadrature below, which share no code with either.
#include "inference/inside/chain_checks.h"
#include "inference/inside/hamiltonian.h"
#include "inference/inside/importance.h"
#include "inference/inside/laplace_draws.h"
#include "inference/inside/minimise.h"
#include "values/interval.h"

#include <doctest/doctest.h>

#include <array>
#include <cmath>

using namespace amentum;
using Eigen::ArrayXd;
using Eigen::Index;
using Eigen::MatrixXd;
using Eigen::VectorXd;

namespace {

constexpr std::array<double, 8> effect{28, 8, -3, 7, -1, 1, 18, 12}, error{15, 10, 16, 11, 9, 11, 10, 18};

// mu ~ N(0, 25), tau ~ half-Cauchy(5): by quadrature of another program; its digits.
constexpr double mean_mu = 4.396821, sd_mu = 3.317704, mean_tau = 3.597705, sd_tau = 3.219958,
                 chance_first_above_third = 0.617404;

// log p(mu, tau | y) with the schools' own effects integrated out, flat priors.
double log_likelihood(double mu, double tau) {
    double sum = 0;
    for (std::size_t j = 0; j < 8; ++j) {
        const double variance = error[j] * error[j] + tau * tau;
        sum -= 0.5 * (std::log(variance) + (effect[j] - mu) * (effect[j] - mu) / variance);
    }
    return sum;
}
double log_prior(double mu, double tau) {
    return -mu * mu / 50 - std::log1p(tau * tau / 25);
}

struct NormalPart {
    double mean, variance;
};
NormalPart school_given(std::size_t j, double mu, double tau) {
    const double weight = tau * tau / (tau * tau + error[j] * error[j]);
    return {mu + weight * (effect[j] - mu), weight * error[j] * error[j]};
}
double chance_above(const NormalPart& a, const NormalPart& b) {
    return normal_cdf((a.mean - b.mean) / std::sqrt(a.variance + b.variance));
}

// Trapezoids over log tau and over mu = 4 + (12 + tau) v.
struct Moments {
    double mu, mu_squared, tau, tau_squared, first, first_above_third;
};
Moments quadrature(bool priors, double most_tau) {
    Eigen::Matrix<double, 6, 1> sums = Eigen::Matrix<double, 6, 1>::Zero(), point;
    double total = 0;
    const double low = -14, high = std::log(most_tau);
    constexpr int steps = 800;
    for (int i = 0; i <= steps; ++i)
        for (int k = 0; k <= steps; ++k) {
            const double tau = std::exp(low + (high - low) * i / steps), v = 5 * (2.0 * k / steps - 1),
                         mu = 4 + (12 + tau) * v;
            const double log_density = log_likelihood(mu, tau) + (priors ? log_prior(mu, tau) : 0);
            const double weight = (i == steps ? 0.5 : 1) * tau * (12 + tau) * std::exp(log_density + 30);
            const NormalPart a = school_given(0, mu, tau), c = school_given(2, mu, tau);
            point << mu, mu * mu, tau, tau * tau, a.mean, chance_above(a, c);
            total += weight;
            sums += weight * point;
        }
    sums /= total;
    return {sums[0], sums[1], sums[2], sums[3], sums[4], sums[5]};
}

// (mu, log tau, eta), theta = mu + tau eta.
double with_schools(const VectorXd& x, VectorXd& gradient) {
    const double mu = x[0], tau = std::exp(x[1]);
    double value = log_prior(mu, tau) + x[1];
    gradient = VectorXd::Zero(10);
    gradient[0] = -mu / 25;
    gradient[1] = 1 - 2 * tau * tau / (25 + tau * tau);
    for (std::size_t j = 0; j < 8; ++j) {
        const auto at = static_cast<Index>(j) + 2;
        const double variance = error[j] * error[j], off = effect[j] - mu - tau * x[at];
        value -= 0.5 * (off * off / variance + x[at] * x[at]);
        gradient[0] += off / variance;
        gradient[1] += off / variance * tau * x[at];
        gradient[at] = off / variance * tau - x[at];
    }
    return value;
}

void check_mean(const VectorXd& draws, double expected) {
    const ChainCheck check = check_chains(draws, 4);
    CAPTURE(check.mean);
    CAPTURE(check.error);
    CAPTURE(expected);
    CHECK(std::abs(check.mean - expected) < 4 * check.error);
    CHECK(check.error < 0.05 * check.sd);
    CHECK(check.r_hat < 1.01);
}

} // namespace

TEST_CASE("eight schools by quadrature: the expected values hold") {
    const Moments m = quadrature(true, 3000);
    CHECK(std::abs(m.mu - mean_mu) < 1e-4);
    CHECK(std::abs(std::sqrt(m.mu_squared - m.mu * m.mu) - sd_mu) < 1e-4);
    CHECK(std::abs(m.tau - mean_tau) < 1e-4);
    CHECK(std::abs(std::sqrt(m.tau_squared - m.tau * m.tau) - sd_tau) < 1e-4);
    CHECK(std::abs(m.first_above_third - chance_first_above_third) < 1e-4);
}

TEST_CASE("eight schools by Hamiltonian Monte Carlo") {
    VectorXd mean = VectorXd::Zero(10), spread = VectorXd::Ones(10);
    mean.head(2) << 4.5, 1;
    spread[0] = 3.3;
    HamiltonianOptions options;
    options.kept = 2000;
    const Draws draws = draw_hamiltonian(with_schools, mean, spread.asDiagonal(), options);
    const ArrayXd mu = draws.values.row(0), tau = draws.values.row(1).array().exp();
    check_mean(mu, mean_mu);
    check_mean((mu - mean_mu).square(), sd_mu * sd_mu);
    check_mean(tau, mean_tau);
    const ChainCheck spread_of_tau = check_chains((tau - mean_tau).square(), 4);
    CHECK(std::abs(spread_of_tau.mean - sd_tau * sd_tau) < 4 * spread_of_tau.error);
    const ArrayXd eta_apart = draws.values.row(2) - draws.values.row(4);
    check_mean((eta_apart > 0).cast<double>(), chance_first_above_third);
    INFO("divergences " << draws.divergences << ", acceptance " << draws.acceptance << ", tau's bulk "
                        << check_chains(tau, 4).bulk_size << " of 8000");
}

TEST_CASE("eight schools by weighted draws around the mode") {
    // In (mu, log tau); minus the log posterior, its gradient by central differences: only the proposal hangs on it.
    const auto log_posterior = [](const VectorXd& x) {
        return log_likelihood(x[0], std::exp(x[1])) + log_prior(x[0], std::exp(x[1])) + x[1];
    };
    const auto objective = [&](const VectorXd& x, VectorXd& gradient) {
        for (Index k = 0; k < 2; ++k) {
            const VectorXd step = 1e-4 * VectorXd::Unit(2, k);
            gradient[k] = (log_posterior(x - step) - log_posterior(x + step)) / 2e-4;
        }
        return -log_posterior(x);
    };
    MinimumOptions options;
    options.small_gradient = 1e-6;
    const Minimum mode = minimise(objective, VectorXd::Constant(2, 1.0), options);
    MatrixXd curvature(2, 2);
    for (Index k = 0; k < 2; ++k) {
        const VectorXd step = 1e-3 * VectorXd::Unit(2, k);
        VectorXd up(2), down(2);
        objective(mode.x + step, up);
        objective(mode.x - step, down);
        curvature.col(k) = (up - down) / 2e-3;
    }
    const MatrixXd factor = curvature.inverse().llt().matrixL();
    const LaplaceDraws drawn = draw_around(mode.x, factor, 7, 8000, 3);
    VectorXd log_ratios(8000), above(8000);
    for (Index i = 0; i < 8000; ++i) {
        const VectorXd x = drawn.values.col(i);
        log_ratios[i] = log_posterior(x) - drawn.log_density[i];
        above[i] = chance_above(school_given(0, x[0], std::exp(x[1])), school_given(2, x[0], std::exp(x[1])));
    }
    const ImportanceWeights weighed = smooth_importance(log_ratios);
    INFO("k-hat " << weighed.tail_shape << ", worth " << weighed.size << " of 8000");
    CHECK(weighed.tail_shape < tail_shape_limit(8000));
    const auto check = [&](const VectorXd& x, double expected) {
        const double error_of_mean = weighted_mean_error(x, weighed.weights);
        CAPTURE(expected);
        CAPTURE(error_of_mean);
        CHECK(std::abs(weighted_mean(x, weighed.weights) - expected) < 4 * error_of_mean);
    };
    const VectorXd mu = drawn.values.row(0), tau = drawn.values.row(1).array().exp();
    check(mu, mean_mu);
    check(tau, mean_tau);
    check((mu.array() - mean_mu).square(), sd_mu * sd_mu);
    check((tau.array() - mean_tau).square(), sd_tau * sd_tau);
    check(above, chance_first_above_third);
}

TEST_CASE("eight schools without priors, tau below 3000: by quadrature") {
    // R 4.2.2, integrate() over tau with mu integrated out in closed form, relative tolerance 1e-12.
    const Moments m = quadrature(false, 3000);
    CHECK(std::abs(m.mu - 7.932375) < 1e-5);
    CHECK(std::abs(m.tau - 6.575483) < 1e-5);
    CHECK(std::abs(m.first - 11.400260) < 1e-5);
}
