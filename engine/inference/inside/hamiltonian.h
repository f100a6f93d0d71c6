// Draws from a density known up to a constant, by Hamiltonian Monte Carlo in whitened coordinates.
//
// x = mean + factor z, factor the Cholesky factor of a covariance near the truth (Laplace's), so that z is near N(0, I):
//   p ~ N(0, I); leapfrog (z, p) -> (z*, p*); accept with chance min(1, exp(H - H*)), H = -log f + p'p / 2   [Neal2011]
// A path is a quarter turn of N(0, I), pi / 2 long, give or take 30 % at random so that nothing comes round to where it began;
// in as many leapfrogs as their size asks for, and shorter where that would be more than `leapfrogs`.
// Their size: dual averaging towards `acceptance` through the warm-up, then fixed [HoffmanGelman2014, algorithm 5].
// A chain starts at a draw of N(0, I) in z. Its random numbers follow from the seed and its number alone: the same draws in
// any order and on any number of threads.
// A divergence is a path whose H rose by more than 1000, or that left the density; it counts after the warm-up.
// Valid: chains >= 1, warm_up and kept >= 1, leapfrogs >= 1, 0 < acceptance < 1, f finite at the mean (asserted).
// What it cannot tell: whether the chains have met (chain_checks.h); parts of the density no chain came to.
//
// Example: two normal numbers, correlated: draw_hamiltonian(f, mean, factor).values has their means in its rows.
#pragma once

#include <Eigen/Dense>

#include <cstddef>
#include <cstdint>
#include <functional>

namespace amentum {

// Answers log f(x), up to a constant, and fills the gradient. Not finite: no such point.
// Called at once from several chains when the runner does so.
using LogDensity = std::function<double(const Eigen::VectorXd& x, Eigen::VectorXd& gradient)>;

struct HamiltonianOptions {
    int chains = 4;
    int warm_up = 200;
    int kept = 400;
    int leapfrogs = 12; // the most of a draw
    double acceptance = 0.9;
    std::uint64_t seed = 1;
    std::function<bool(double share)> going =
        {}; // told how far it is, 0 to 1, every few draws; false stops it
    std::function<void(std::size_t parts, const std::function<void(std::size_t)>& part)> run =
        {}; // of chains
};

struct Draws {
    Eigen::MatrixXd values;      // parameter x (chains kept): chain after chain; empty when stopped
    Eigen::VectorXd log_density; // log f of each draw
    int chains;
    double acceptance; // mean over the kept draws
    int divergences;
    double step; // mean over the chains, in whitened units
    long gradients;
    bool stopped;
};

Draws draw_hamiltonian(const LogDensity& f, const Eigen::VectorXd& mean, const Eigen::MatrixXd& factor,
                       const HamiltonianOptions& options = {});

} // namespace amentum
