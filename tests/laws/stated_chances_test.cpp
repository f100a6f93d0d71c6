// What a stated chance is worth: changes are drawn from a roster's distribution, measured with error, and judged; of those of
// which a chance of 90 % or more is stated, how many were truly worthwhile?
//
// True changes N(0.3, 0.6^2), typical error 0.8 a test, smallest worthwhile 0.6. By numerical integration over the measured
// difference in R 4.2.2 (below): without a prior 0.9525 is stated on average and 0.6525 is right; with the roster's own prior
// 0.9199 and 0.9199, stated of one change in 4,000. True changes N(0, 0.5^2): without a prior right in 0.3478.
//
//   mu <- 0.3; s <- 0.6; e <- 0.8 * sqrt(2); w <- 0.6; k <- s^2 / (s^2 + e^2); p <- sqrt(k) * e
//   right <- function(d) pnorm((mu + k * (d - mu) - w) / p); density <- function(d) dnorm(d, mu, sqrt(s^2 + e^2))
//   from <- w + qnorm(0.9) * e                              # without a prior; with it: mu + (w + qnorm(0.9) * p - mu) / k
//   integrate(function(d) right(d) * density(d), from, Inf)$value / integrate(density, from, Inf)$value
#include "inference/change.h"
#include "inference/random_stream.h"

#include <doctest/doctest.h>

#include <cmath>

using namespace amentum;

namespace {

struct Kept {
    double many = 0, stated = 0, right = 0;
    void add(double chance, bool true_one) {
        if (chance < 0.9)
            return;
        many += 1;
        stated += chance;
        right += true_one;
    }
    double mean_stated() const { return stated / many; }
    double share_right() const { return right / many; }
    double error() const { return std::sqrt(share_right() * (1 - share_right()) / many); }
};

struct Promises {
    Kept flat, with_prior;
};

Promises judge_many(double mean, double spread, int many) {
    RandomStream stream(20261125);
    Promises kept;
    const double error = 0.8 * std::sqrt(2.0), worthwhile = 0.6;
    for (int i = 0; i < many; ++i) {
        const double change = mean + spread * stream.next_normal();
        const double seen = change + error * stream.next_normal();
        const auto judged = judge_measured_change({seen, error, worthwhile, {mean, spread * spread}});
        kept.flat.add(*judged.flat_chance_gained, change > worthwhile);
        kept.with_prior.add(judged.chance_gained, change > worthwhile);
    }
    return kept;
}

} // namespace

TEST_CASE(
    "a chance of 90 % without a prior is right two times in three; with the roster's it is right as stated") {
    const auto kept = judge_many(0.3, 0.6, 3000000);
    CHECK(kept.flat.mean_stated() == doctest::Approx(0.9525).epsilon(0.001));
    CHECK(std::abs(kept.flat.share_right() - 0.6525) < 4 * kept.flat.error());
    CHECK(kept.with_prior.mean_stated() == doctest::Approx(0.9199).epsilon(0.005));
    CHECK(std::abs(kept.with_prior.share_right() - 0.9199) < 4 * kept.with_prior.error());
    CHECK(kept.with_prior.many < kept.flat.many / 100); // it seldom says so
}

TEST_CASE("where true changes are few, it is right one time in three") {
    const auto kept = judge_many(0, 0.5, 400000);
    CHECK(std::abs(kept.flat.share_right() - 0.3478) < 4 * kept.flat.error());
}
