// R-hat, effective numbers of draws and their standard errors, against first-order autoregressive chains, whose closed form is
// known, and against chains that must raise the alarm. The same numbers beside R's: samplers_of_r_test.cpp.
#include "inference/inside/chain_checks.h"
#include "inference/random_stream.h"

#include <doctest/doctest.h>

#include <cmath>
#include <string>

using namespace amentum;
using Eigen::Index;
using Eigen::VectorXd;

namespace {

constexpr int chains = 4;
constexpr Index each = 1000;
constexpr double S = chains * each;

// x_t = rho x_{t-1} + sqrt(1 - rho^2) z_t, from its own stationary law: mean 0, variance 1.
VectorXd chains_of(double rho, const std::string& name) {
    VectorXd x(chains * each);
    for (Index c = 0; c < chains; ++c) {
        RandomStream random(seed_from(11, name + " chain " + std::to_string(c)));
        double at = random.next_normal();
        for (Index t = 0; t < each; ++t) {
            x[c * each + t] = at;
            at = rho * at + std::sqrt(1 - rho * rho) * random.next_normal();
        }
    }
    return x;
}

struct Repeated {
    double mean, error;
};
template <class Number>
Repeated repeat(int times, Number number) {
    double sum = 0, squares = 0;
    for (int i = 0; i < times; ++i) {
        const double x = number(std::to_string(i));
        sum += x / times;
        squares += x * x / times;
    }
    return {sum, std::sqrt((squares - sum * sum) / (times - 1))};
}

} // namespace

TEST_CASE("independent draws have met, and each is worth a draw") {
    const ChainCheck check = check_chains(chains_of(0, "independent"), chains);
    CHECK(check.r_hat < 1.01);
    CHECK(check.r_hat > 0.99);
    CHECK(std::abs(check.mean) < 4 / std::sqrt(S));
    CHECK(std::abs(check.sd - 1) < 4 / std::sqrt(2 * S));
    for (const double size : {check.bulk_size, check.tail_size, check.mean_size})
        CHECK(std::abs(size / S - 1) <
              0.25); // few correlations are summed, each with an error of 1 / sqrt(S)
}

TEST_CASE("autoregressive chains: size S (1 - rho) / (1 + rho)") {
    // Correlation rho^t at distance t, so tau = 1 + 2 (rho + rho^2 + ...) = (1 + rho) / (1 - rho). Within four standard errors
    // of the mean of 40, and 6 % for what the sum's being cut where it turns negative adds or leaves out.
    for (const double rho : {-0.4, 0.0, 0.3, 0.6, 0.9}) {
        const double tau = (1 + rho) / (1 - rho);
        const auto close = [&](double ChainCheck::*size) {
            const Repeated found = repeat(40, [&](const std::string& name) {
                return S / (check_chains(chains_of(rho, "autoregressive " + name), chains).*size);
            });
            CAPTURE(rho);
            CAPTURE(found.mean / tau);
            CAPTURE(found.error / tau);
            CHECK(std::abs(found.mean / tau - 1) < 4 * found.error / tau + 0.06);
        };
        close(&ChainCheck::mean_size);
        close(&ChainCheck::bulk_size);
    }
}

TEST_CASE("the stated error of a mean is how far means lie from the truth") {
    // (mean / error)^2 is about chi-squared of one degree of freedom: mean 1, variance 2.
    const Repeated square = repeat(200, [](const std::string& name) {
        const ChainCheck check = check_chains(chains_of(0.6, "error " + name), chains);
        return std::pow(check.mean / check.error, 2);
    });
    CHECK(std::abs(square.mean - 1) < 4 * std::sqrt(2 / 200.0));
}

TEST_CASE("a chain at another place, or of another spread, raises the alarm") {
    // One of four shifted by one SD: the eight halves' means have variance (8/7) (1/4) (3/4) = 3/14, so R-hat is about
    // sqrt(1 + 3/14) = 1.102; ranks draw the far chain in a little.
    VectorXd apart = chains_of(0, "apart");
    apart.tail(each).array() += 1;
    const ChainCheck shifted = check_chains(apart, chains);
    CHECK(shifted.r_hat == doctest::Approx(1.102).epsilon(0.03));
    CHECK(shifted.bulk_size < S / 50);

    VectorXd wide = chains_of(0, "wide");
    wide.tail(each) *= 3; // the same place: only the folded ranks can tell
    CHECK(check_chains(wide, chains).r_hat > 1.05);

    VectorXd drifting = chains_of(0, "drifting"); // alike, but not where they began
    for (Index i = 0; i < drifting.size(); ++i)
        drifting[i] += 2 * static_cast<double>(i % each) / each;
    CHECK(check_chains(drifting, chains).r_hat > 1.05);
}

TEST_CASE("draws that never vary") {
    for (const double value : {0.0, 0.1, -7.3e9}) { // 0.1: a sum of a thousand is not a thousand times it
        const ChainCheck check = check_chains(VectorXd::Constant(chains * each, value), chains);
        CAPTURE(value);
        CHECK(check.mean == value);
        CHECK(check.r_hat == 1);
        for (const double size : {check.bulk_size, check.tail_size, check.mean_size})
            CHECK(size == S);
        CHECK(check.error == 0);
    }
}

TEST_CASE("a chain that is stuck, or all of them at different places, raises the alarm") {
    VectorXd one = chains_of(0, "one stuck");
    one.head(each).setConstant(0.1);
    CHECK(check_chains(one, chains).r_hat > 1.05);
    CHECK(std::isfinite(check_chains(one, chains).error));
    VectorXd all(chains * each);
    for (Index i = 0; i < all.size(); ++i)
        all[i] = static_cast<double>(i / each);
    const ChainCheck stuck = check_chains(all, chains);
    CHECK(stuck.r_hat > 10);
    CHECK(stuck.bulk_size < 100);
    // Two places, as far from the median on either side; numbers of draws whose mean is exact, and not.
    for (const Index n : {64, 1000}) {
        VectorXd two(2 * n);
        two.head(n).setConstant(-1);
        two.tail(n).setConstant(1);
        CHECK(check_chains(two, 2).r_hat > 10);
        CHECK(check_chains(two, 2).bulk_size < 100);
    }
}
