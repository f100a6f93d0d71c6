#include "inference/inside/hamiltonian.h"

#include "inference/random_stream.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <limits>
#include <numbers>
#include <string>
#include <vector>

namespace amentum {
namespace {

using Eigen::Index;
using Eigen::VectorXd;

constexpr double most_energy = 1000; // a path that gains more has diverged
constexpr int draws_between_calls = 10;
constexpr int most_starts = 100;
constexpr double quarter_turn = std::numbers::pi / 2;

// log f and its gradient in z.
struct Whitened {
    const LogDensity& f;
    const VectorXd& mean;
    const Eigen::MatrixXd& factor;

    VectorXd x(const VectorXd& z) const { return mean + factor * z; }
    double operator()(const VectorXd& z, VectorXd& gradient) const {
        VectorXd slope = VectorXd::Zero(mean.size());
        const double value = f(x(z), slope);
        gradient.noalias() = factor.transpose() * slope;
        return gradient.allFinite() ? value : std::numeric_limits<double>::quiet_NaN();
    }
};

// Algorithm 5's constants are the paper's.
struct StepSize {
    double target, centre, step, smoothed = 0, deficit = 0;
    int seen = 0;

    StepSize(double target_acceptance, Index dimension)
        : target(target_acceptance), centre(0), step(std::pow(static_cast<double>(dimension), -0.25)) {
        centre = std::log(10 * step);
    }
    void learn(double acceptance) {
        constexpr double gamma = 0.05, offset = 10, kappa = 0.75;
        const double t = ++seen;
        deficit += (target - acceptance - deficit) / (t + offset);
        const double log_step = std::min(centre - std::sqrt(t) / gamma * deficit, std::log(quarter_turn));
        smoothed += std::pow(t, -kappa) * (log_step - smoothed);
        step = std::exp(log_step);
    }
    void settle() { step = std::exp(smoothed); }
};

struct Path {
    int leapfrogs;
    double step;
};

struct Point {
    VectorXd z, gradient;
    double log_density = 0;
};

class Chain {
public:
    Chain(const Whitened& density, const HamiltonianOptions& options, int number)
        : density_(density), options_(options),
          random_(seed_from(options.seed, "chain " + std::to_string(number))),
          size_(options.acceptance, density.mean.size()), first_column_(Index{number} * options.kept) {}

    void start() {
        at_.z = VectorXd::Zero(density_.mean.size());
        for (int i = 0; i <= most_starts; ++i) {
            if (i < most_starts)
                fill(at_.z);
            else
                at_.z.setZero();
            at_.log_density = evaluate(at_.z, at_.gradient);
            if (std::isfinite(at_.log_density))
                return;
        }
        assert(false && "the density is not finite at its mean");
    }
    // The next few draws, into the chain's own columns.
    void advance(int draws, Draws& out) {
        for (const int end = done_ + draws; done_ < end; ++done_) {
            if (done_ == 0)
                start();
            const bool warming = done_ < options_.warm_up;
            const double chance = move();
            if (warming)
                size_.learn(chance);
            if (done_ + 1 == options_.warm_up)
                size_.settle();
            if (!warming)
                keep(chance, out);
        }
    }
    double acceptance() const { return chances_ / options_.kept; }
    int divergences() const { return divergences_; }
    double step() const { return size_.step; }
    long gradients() const { return gradients_; }

private:
    void fill(VectorXd& normal) {
        for (double& each : normal)
            each = random_.next_normal();
    }
    double evaluate(const VectorXd& z, VectorXd& gradient) {
        ++gradients_;
        return density_(z, gradient);
    }
    // Leapfrogs of one size that end where the path does; fewer of them when there would be too many.
    Path next_path() {
        const double length = quarter_turn * (0.7 + 0.6 * random_.next_uniform());
        const double leapfrogs = std::ceil(length / size_.step);
        if (leapfrogs > options_.leapfrogs)
            return {options_.leapfrogs, size_.step};
        return {static_cast<int>(leapfrogs), length / leapfrogs};
    }
    // One path and its acceptance; answers the chance it had.
    double move() {
        VectorXd p(at_.z.size());
        fill(p);
        const Path path = next_path();
        const double luck = random_.next_uniform();
        const double energy = p.squaredNorm() / 2 - at_.log_density;
        Point to = at_;
        double gain = 0;
        for (int i = 0; i < path.leapfrogs; ++i) {
            p += path.step / 2 * to.gradient;
            to.z += path.step * p;
            to.log_density = evaluate(to.z, to.gradient);
            p += path.step / 2 * to.gradient;
            gain = p.squaredNorm() / 2 - to.log_density - energy;
            if (!(gain < most_energy)) { // not a number counts as well
                divergences_ += done_ >= options_.warm_up ? 1 : 0;
                return 0;
            }
        }
        const double chance = std::min(1.0, std::exp(-gain));
        if (luck < chance)
            at_ = std::move(to);
        return chance;
    }
    void keep(double chance, Draws& out) {
        chances_ += chance;
        const Index column = first_column_ + done_ - options_.warm_up;
        out.values.col(column) = density_.x(at_.z);
        out.log_density[column] = at_.log_density;
    }

    const Whitened& density_;
    const HamiltonianOptions& options_;
    RandomStream random_;
    StepSize size_;
    Index first_column_;
    Point at_;
    int done_ = 0, divergences_ = 0;
    long gradients_ = 0;
    double chances_ = 0;
};

void run_parts(const HamiltonianOptions& options, std::size_t parts,
               const std::function<void(std::size_t)>& part) {
    if (options.run)
        return options.run(parts, part);
    for (std::size_t i = 0; i < parts; ++i)
        part(i);
}

} // namespace

Draws draw_hamiltonian(const LogDensity& f, const VectorXd& mean, const Eigen::MatrixXd& factor,
                       const HamiltonianOptions& options) {
    assert(options.chains > 0 && options.warm_up > 0 && options.kept > 0 && options.leapfrogs > 0);
    assert(options.acceptance > 0 && options.acceptance < 1);
    assert(factor.rows() == mean.size() && factor.cols() == mean.size());
    const Whitened density{f, mean, factor};
    const Index columns = Index{options.chains} * options.kept;
    Draws out{Eigen::MatrixXd(mean.size(), columns), VectorXd(columns), options.chains, 0, 0, 0, 0, false};
    std::vector<Chain> chains;
    for (int c = 0; c < options.chains; ++c)
        chains.emplace_back(density, options, c);

    const int all = options.warm_up + options.kept;
    for (int done = 0; done < all; done += draws_between_calls) {
        if (options.going && !options.going(static_cast<double>(done) / all)) {
            out.values.resize(mean.size(), 0);
            out.log_density.resize(0);
            out.stopped = true;
            return out;
        }
        const int few = std::min(draws_between_calls, all - done);
        run_parts(options, chains.size(), [&](std::size_t c) { chains[c].advance(few, out); });
    }
    for (const Chain& chain : chains) {
        out.acceptance += chain.acceptance() / options.chains;
        out.divergences += chain.divergences();
        out.step += chain.step() / options.chains;
        out.gradients += chain.gradients();
    }
    return out;
}

} // namespace amentum
