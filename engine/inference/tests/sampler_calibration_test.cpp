// Does the sampler say how sure it is? Simulation-based calibration [Talts2018]: a truth is drawn from the prior, readings from the
// truth, draws from the posterior; over many such worlds the truth's rank among the draws is even, whatever the model.
// Evenness by chi-squared over 20 bins of equal chance; it fails below p = 1e-4: 50.795 at 19 degrees of freedom (R 4.2.2, qchisq).
// A right sampler fails one of three such checks with 3 of 10,000 seeds; the seed is fixed. The same check must fail draws whose
// spread is a fifth too short.
#include "inference/inside/hamiltonian.h"
#include "inference/random_stream.h"

#include <doctest/doctest.h>

#include <array>
#include <cmath>
#include <string>

using namespace amentum;
using Eigen::Index;
using Eigen::MatrixXd;
using Eigen::VectorXd;

namespace {

constexpr int worlds = 1200, thinned = 99, every = 5, bins = 20;
constexpr double limit = 50.795;

// mu ~ N(0, 1), log tau ~ N(-1/2, 1/4), four groups mu + tau eta, eta ~ N(0, 1), two readings each ~ N(group, 1/4).
constexpr Index numbers = 6;

struct World {
    VectorXd truth = VectorXd(numbers);
    std::array<double, 4> mean{};

    explicit World(RandomStream random) {
        for (double& each : truth)
            each = random.next_normal();
        truth[1] = -0.5 + 0.5 * truth[1];
        for (std::size_t g = 0; g < 4; ++g)
            mean[g] = truth[0] + std::exp(truth[1]) * truth[static_cast<Index>(g) + 2] +
                      std::sqrt(0.125) * random.next_normal();
    }
    double operator()(const VectorXd& x, VectorXd& gradient) const {
        const double tau = std::exp(x[1]);
        gradient = -x;
        gradient[1] = -4 * (x[1] + 0.5);
        double value = -0.5 * (x.squaredNorm() - x[1] * x[1]) - 2 * (x[1] + 0.5) * (x[1] + 0.5);
        for (std::size_t g = 0; g < 4; ++g) {
            const auto at = static_cast<Index>(g) + 2;
            const double off = mean[g] - x[0] - tau * x[at];
            value -= 0.5 * off * off / 0.125;
            gradient[0] += off / 0.125;
            gradient[1] += off / 0.125 * tau * x[at];
            gradient[at] += off / 0.125 * tau;
        }
        return value;
    }
};

struct Ranks {
    std::array<std::array<int, bins>, 3> right{}, short_of{}; // of mu, log tau, the first group

    void add(std::array<std::array<int, bins>, 3>& ranks, std::size_t k, double truth,
             const VectorXd& draws) {
        const auto below = (draws.array() < truth).count(); // 0 ... 99
        ++ranks[k][static_cast<std::size_t>(below * bins / (thinned + 1))];
    }
    void add(std::size_t k, double truth, const VectorXd& draws) {
        add(right, k, truth, draws);
        const double mean = draws.mean();
        add(short_of, k, truth, mean + 0.8 * (draws.array() - mean));
    }
};

double unevenness(const std::array<int, bins>& ranks) {
    double sum = 0;
    for (const int count : ranks)
        sum += std::pow(count - worlds / static_cast<double>(bins), 2) / (worlds / static_cast<double>(bins));
    return sum;
}

Ranks ranks_of_worlds() {
    Ranks ranks;
    for (int i = 0; i < worlds; ++i) {
        const World world(RandomStream(seed_from(2026, "world " + std::to_string(i))));
        HamiltonianOptions options;
        options.chains = 1;
        options.kept = thinned * every;
        options.seed = seed_from(2026, "draws " + std::to_string(i));
        VectorXd mean = VectorXd::Zero(numbers), spread = VectorXd::Constant(numbers, 0.7);
        mean[1] = -0.5;
        spread[1] = 0.4;
        const Draws draws = draw_hamiltonian(std::cref(world), mean, spread.asDiagonal(), options);
        const auto group = [](const auto& x) { return x[0] + std::exp(x[1]) * x[2]; };
        MatrixXd kept(3, thinned);
        for (Index d = 0; d < thinned; ++d) {
            const VectorXd x = draws.values.col(every * d);
            kept.col(d) << x[0], x[1], group(x);
        }
        ranks.add(0, world.truth[0], kept.row(0));
        ranks.add(1, world.truth[1], kept.row(1));
        ranks.add(2, group(world.truth), kept.row(2));
    }
    return ranks;
}

} // namespace

TEST_CASE("ranks of the truth are even, and draws a fifth too narrow are found out") {
    const Ranks ranks = ranks_of_worlds();
    for (std::size_t k = 0; k < 3; ++k) {
        CAPTURE(k);
        INFO("chi-squared " << unevenness(ranks.right[k]) << ", of narrow draws "
                            << unevenness(ranks.short_of[k]));
        CHECK(unevenness(ranks.right[k]) < limit);
        CHECK(unevenness(ranks.short_of[k]) > limit);
    }
}
