// 50 rosters of 200 athletes, 12 days, 6 qualities, sessions, slopes of athletes' own and missing readings: the intervals of
// what goes with velocity within athletes hold the truth as often as they say; those of a mixed model of observed values,
// person-mean centred as is usual, do not. The truth is the simulation's own (simulated_rosters.h); seeds are 1 to 50.
#include "simulated_rosters.h"

#include <doctest/doctest.h>

using namespace amentum;

TEST_CASE("6 slopes of 50 rosters: 95 % and 80 % intervals hold the truth as often as they say") {
    constexpr std::size_t rosters = 50;
    const World world;
    const RosterPriors priors{std::vector<Estimate>(6, {0, 2}), std::vector<Estimate>(6, {0, 4})};
    struct Fitted {
        std::optional<RosterFit> joint;
        std::optional<MixedFit> naive;
    };
    std::vector<Fitted> fitted(rosters);
    on_two_threads(rosters, [&](std::size_t r) {
        const SimulatedRoster made = simulate_roster(world, r + 1);
        if (auto fit = fit_joint_model(made.joint, priors))
            fitted[r].joint = std::move(*fit);
        if (auto fit = fit_mixed_model(centred_rows(made), RandomShape::diagonal, Likelihood::restricted))
            fitted[r].naive = std::move(*fit);
    });
    HeldTruths joint, naive;
    std::vector<HeldTruths> each(6), each_naive(6);
    for (const auto& [fit, mixed] : fitted) {
        REQUIRE(fit);
        REQUIRE(mixed);
        for (std::size_t k = 0; k < 6; ++k) {
            each[k].add(world.within[k], fit->within[k]);
            each_naive[k].add(world.within[k], {mixed->beta[1 + k], mixed->standard_error[1 + k]});
        }
    }
    for (std::size_t k = 0; k < 6; ++k) {
        MESSAGE("truth " << world.within[k] << ": joint model off " << each[k].bias() << " (SE "
                         << each[k].usual_error() << "), 95 % " << each[k].held95 << ", 80 % "
                         << each[k].held80 << " of 50; observed values off " << each_naive[k].bias()
                         << " (SE " << each_naive[k].usual_error() << "), " << each_naive[k].held95 << ", "
                         << each_naive[k].held80);
        joint.add(each[k]);
        naive.add(each_naive[k]);
    }
    MESSAGE("all: joint model 95 % " << 100 * joint.share95() << ", 80 % " << 100 * joint.share80()
                                     << "; observed values " << 100 * naive.share95() << ", "
                                     << 100 * naive.share80());
    CHECK(joint.share95() > 0.92);
    CHECK(joint.share95() < 0.98);
    CHECK(joint.share80() > 0.75);
    CHECK(joint.share80() < 0.85);
    CHECK(naive.share95() < 0.5); // a sixth of the truths is 0, which even a slope too close to zero holds
}
