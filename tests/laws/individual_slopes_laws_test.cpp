// Slopes of athletes' own: the more athletes truly differ, the more the estimate says, and each one's interval holds its truth.
// The truth is the simulation's own (simulated_rosters.h). What was measured: docs/methods/individual_slopes.md.
#include "inference/individual_slopes.h"
#include "simulated_rosters.h"

#include <doctest/doctest.h>

using namespace amentum;

namespace {

constexpr std::size_t rosters = 5, predictors = 2;

struct Own {
    IndividualSlopes slopes;
    HeldTruths coverage, roster; // of athletes' own slopes; the roster's slope taken for each
    double unit;                 // one spread, mph for one spread of a quality
};

std::vector<Own> measured(double true_sd) {
    World world{150, 12, 60, 1500, {0.9, 0.5}, {1.5, 1.0}, {0.3, 0.35}, {0.15, 0.15}};
    world.own_slopes = true_sd;
    const RosterPriors priors{std::vector<Estimate>(predictors, {0, 2}),
                              std::vector<Estimate>(predictors, {0, 4})};
    std::vector<std::optional<Own>> all(rosters);
    on_two_threads(rosters, [&](std::size_t r) {
        const SimulatedRoster made = simulate_roster(world, r + 1);
        const auto fit = fit_joint_model(made.joint, priors);
        if (!fit)
            return;
        Own own{estimate_individual_slopes(made.joint, *fit), {}, {}, fit->mode.unit[0] / fit->mode.unit[1]};
        for (std::size_t i = 0; i < made.own.size(); ++i)
            for (std::size_t k = 0; k < predictors; ++k) {
                own.coverage.add(made.own[i][k], own.slopes.athletes[i][k]);
                own.roster.add(made.own[i][k], fit->within[k]);
            }
        all[r] = std::move(own);
    });
    std::vector<Own> done;
    for (auto& own : all) {
        REQUIRE(own);
        MESSAGE("true spread " << true_sd / own->unit << ": estimated " << own->slopes.spread.value << " +- "
                               << own->slopes.spread.standard_error << ", learned "
                               << own->slopes.spread_learned << "; 80 % of athletes' own "
                               << 100 * own->coverage.share80() << ", 95 % " << 100 * own->coverage.share95()
                               << " (SE " << own->coverage.usual_error()
                               << "); the roster's interval instead " << 100 * own->roster.share80());
        done.push_back(std::move(*own));
    }
    return done;
}

} // namespace

TEST_CASE("athletes who differ are told from athletes who do not, and own intervals hold own slopes") {
    const auto same = measured(0), some = measured(0.25), differ = measured(0.6);
    HeldTruths none, few, many;
    for (std::size_t r = 0; r < rosters; ++r) {
        CAPTURE(r);
        CHECK(differ[r].slopes.spread.value > same[r].slopes.spread.value);
        none.add(same[r].coverage);
        few.add(some[r].coverage);
        many.add(differ[r].coverage);
    }
    MESSAGE("80 % of athletes' own slopes held: SD 0 " << 100 * none.share80() << ", SD 0.25 "
                                                       << 100 * few.share80() << ", SD 0.6 "
                                                       << 100 * many.share80());
    // Measured: 100, 66 and 71; rosters differ by 14 points, so means of five by 6. Not 80: the spread leans low.
    CHECK(none.share80() > 0.8); // who do not differ are given a little doubt they do not need
    for (const double share : {few.share80(), many.share80()}) {
        CHECK(share > 0.5);
        CHECK(share < 0.9);
    }
}
