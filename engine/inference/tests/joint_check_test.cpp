// The check of the joint fit: what the caller may stop, and what the checked fit takes over. Whether its numbers are right:
// tests/independent_program/joint_model_test.cpp and tests/laws.
#include "inference/joint_check.h"
#include "inference/random_stream.h"

#include <doctest/doctest.h>

#include <cmath>

using namespace amentum;

namespace {

const RosterPriors priors{{{0.5, 0.5}}, {{0.5, 0.5}}};

RosterData few_athletes() {
    RandomStream random(3);
    RosterData data{2, 0, {}};
    for (int i = 0; i < 20; ++i) {
        RosterAthlete athlete;
        double x = random.next_normal();
        const double base = 30 + random.next_normal();
        for (int t = 0; t < 5; ++t) {
            athlete.days.push_back(
                {30 * t, {{0, base + x + 0.2 * random.next_normal()}, {1, x + 0.2 * random.next_normal()}}});
            x += 0.2 * random.next_normal();
        }
        data.athletes.push_back(std::move(athlete));
    }
    return data;
}

} // namespace

TEST_CASE("a small roster is sampled, the same every time, and its fit takes the sampled slopes over") {
    const RosterData data = few_athletes();
    const auto fit = fit_joint_model(data, priors);
    REQUIRE(fit);
    const JointCheckOptions quick{100, 50, 60};
    const auto check = check_joint_fit(data, priors, *fit, {}, quick);
    REQUIRE(check);
    CHECK(check->sampled);
    CHECK(check->worst_r_hat < 1.2);
    CHECK(check->within.front().standard_error > 0);
    CHECK(check->within_covariance.front() ==
          doctest::Approx(std::pow(check->within.front().standard_error, 2)).epsilon(1e-9));
    const auto again = check_joint_fit(data, priors, *fit, {}, quick);
    CHECK(again->within.front().value == check->within.front().value);
    const RosterFit taken = checked_fit(*fit, priors, *check);
    CHECK(taken.within.front().value == check->within.front().value);
    CHECK(taken.within_learned.front() ==
          doctest::Approx(1 - std::pow(check->within.front().standard_error / 0.5, 2)).epsilon(1e-12));
    CHECK(taken.mode.phi == fit->mode.phi);
}

TEST_CASE("fit and check stop when told to, and say so") {
    const RosterData data = few_athletes();
    int told = 0;
    double most = 0;
    const FitControl three{{}, [&](double share) {
                               most = std::max(most, share);
                               return ++told < 3;
                           }};
    const auto fit = fit_joint_model(data, priors, three);
    REQUIRE(!fit);
    CHECK(fit.refusal().code == RefusalCode::stopped);
    CHECK(told >= 3);
    CHECK(most < 0.5);
    const auto whole = fit_joint_model(data, priors);
    REQUIRE(whole);
    const auto check =
        check_joint_fit(data, priors, *whole, {{}, [](double share) { return share < 0.5; }}, {100, 50, 60});
    REQUIRE(!check);
    CHECK(check.refusal().code == RefusalCode::stopped);
}

TEST_CASE("a fit started from a kept one finds the mode in fewer steps") {
    RosterData data = few_athletes();
    const auto first = fit_joint_model(data, priors);
    REQUIRE(first);
    data.athletes[4].days.push_back({200, {{0, 30.5}, {1, 0.4}}});
    const auto cold = fit_joint_model(data, priors);
    const auto warm = fit_joint_model(data, priors, {{}, {}, &first->mode});
    REQUIRE(cold);
    REQUIRE(warm);
    CHECK(warm->evaluations < cold->evaluations);
    // The weak priors stand in the readings' spreads, and those are the kept fit's: alike to a hundredth of an error.
    CHECK(std::abs(warm->within.front().value - cold->within.front().value) <
          0.01 * cold->within.front().standard_error);
}

TEST_CASE("parts run in any order give the very same fit") {
    const RosterData data = few_athletes();
    const PartRunner backwards = [](std::size_t parts, const std::function<void(std::size_t)>& part) {
        while (parts > 0)
            part(--parts);
    };
    const auto forwards = fit_joint_model(data, priors),
               reversed = fit_joint_model(data, priors, {backwards});
    CHECK(forwards->within.front().value == reversed->within.front().value);
    CHECK(forwards->mode.phi == reversed->mode.phi);
}
