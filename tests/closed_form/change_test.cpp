// Is a change real: values of the closed form, worked by hand from the formulas in inference/change.h.
//
// d = 1.5, typical error 0.8 (so the difference has 0.8 sqrt 2 = 1.131371), smallest worthwhile 0.6, prior
// N(0, 1):
//   flat    Phi((1.5 - 0.6) / 1.131371) = Phi(0.795495) = 0.786837;  Student t with 16 df: R's pt gives
//   0.7810157407 prior   mean 1.5 / (1 + 1.28) = 0.657895, sd sqrt(1.28 / 2.28) = 0.749269, Phi((0.657895 -
//   0.6) / 0.749269) = 0.530795 MDC95   1.959964 x 1.131371 = 2.217487
#include "inference/change.h"
#include "inference/change_prior.h"
#include "reports/verdicts.h"

#include <doctest/doctest.h>

#include <cmath>
#include <vector>

using namespace amentum;

namespace {

bool near(double value, double expected, double tolerance = 1e-6) {
    return std::abs(value - expected) < tolerance;
}

} // namespace

TEST_CASE("one measured change, with and without a prior") {
    MeasuredChange change{1.5, 0.8 * std::sqrt(2.0), 0.6, {0, 1}};
    const auto judged = judge_measured_change(change);
    CHECK(near(*judged.flat_chance_gained, 0.786837));
    CHECK(near(judged.likely.value, 0.657895));
    CHECK(near(judged.likely.standard_error, 0.749269));
    CHECK(near(judged.chance_gained, 0.530795));
    CHECK(near(judged.likely.central().low, 0.657895 - 1.281552 * 0.749269, 2e-6));
    CHECK(judged.verdict == ChangeVerdict::cannot_tell);
    change.degrees_of_freedom = 16;
    CHECK(near(*judge_measured_change(change).flat_chance_gained, 0.781016));
    CHECK(near(smallest_detectable_difference(0.8, 0.8), 2.217487));
}

TEST_CASE("a verdict needs nine chances in ten") {
    // Prior N(0, 100^2) hardly moves it: P(gain) = Phi((d - 0.6) / 0.5). Phi(1.2816) = 0.9.
    const auto at = [](double d) { return judge_measured_change({d, 0.5, 0.6, {0, 1e4}}).verdict; };
    CHECK(at(0.6 + 0.5 * 1.30) == ChangeVerdict::gained);
    CHECK(at(0.6 + 0.5 * 1.26) == ChangeVerdict::cannot_tell);
    CHECK(at(-0.6 - 0.5 * 1.30) == ChangeVerdict::lost);
    CHECK(at(0) == ChangeVerdict::cannot_tell);
}

TEST_CASE("the change along a trajectory of two tests is the closed form with the walk as its prior") {
    // A diffuse start and two tests 50 days apart: the change has prior N(0, 50 q) and is seen with 2 x 0.64.
    const std::vector<DatedValue> tests{{0, 80.0, 0.64}, {50, 81.5, 0.64}};
    const auto trajectory = estimate_trajectory(tests, 1.0 / 50);
    const auto judged = judge_trajectory_change(trajectory, 0, 1, 0.6);
    CHECK(near(judged.likely.value, 0.657895));
    CHECK(near(judged.likely.standard_error, 0.749269));
    CHECK(near(judged.chance_gained, 0.530795));
    CHECK(!judged.flat_chance_gained);
    const auto less_growth = judge_trajectory_change(trajectory, 0, 1, 0.6, 0.2);
    CHECK(near(less_growth.likely.value, 0.457895));
    CHECK(less_growth.chance_gained < judged.chance_gained);
}

TEST_CASE("smallest worthwhile change: a fifth of the spread that is not error") {
    // Values 70, 80, 90: variance 100; error variance 36: 0.2 sqrt(64) = 1.6.
    const std::vector<DatedValue> values{{0, 70, 36}, {0, 80, 36}, {0, 90, 36}};
    CHECK(near(smallest_worthwhile_change(values), 1.6, 1e-12));
    const std::vector<DatedValue> noise{{0, 79, 36}, {0, 80, 36}, {0, 81, 36}};
    CHECK(smallest_worthwhile_change(noise) == 0);
}

TEST_CASE("prior of a change from the roster: equal errors are the moment estimate by hand") {
    // Differences 0, 1, 2, 3, 4, 5: mean 2.5, sample variance 3.5; error variance 1 each: s^2 = 3.5 - 1
    // = 2.5, Var m = 3.5 / 6, so that the variance of one more change is 2.5 + 0.583333.
    std::vector<RosterChange> roster;
    for (int i = 0; i < 6; ++i)
        roster.push_back({static_cast<double>(i), 1.0});
    const auto prior = estimate_change_prior(roster, {0.4, 0.16});
    CHECK(near(prior.change.mean, 2.5));
    CHECK(near(prior.change.variance, 2.5 + 3.5 / 6));
    CHECK(prior.changes == 6);
    roster.pop_back();
    CHECK(estimate_change_prior(roster, {0.4, 0.16}).change.mean == 0.4);
    CHECK(estimate_change_prior(roster, {0.4, 0.16}).changes == 0);
    // Nothing but error: the spread is kept at a quarter of the other prior's, 0.04, and Var m = 1.04 / 6.
    const std::vector<RosterChange> same(6, {0.5, 1.0});
    CHECK(near(estimate_change_prior(same, {0.4, 0.16}).change.variance, 0.04 + 1.04 / 6));
}

TEST_CASE("a change known from a joint model is judged by the same rule, growth and its doubt taken off") {
    // The posterior above, taken over: P(> 0.6) = 0.530795, P(< -0.6) = Phi(-(0.6 + 0.657895) / 0.749269) = Phi(-1.678829).
    const auto judged = judge_known_change({0.657895, 0.749269 * 0.749269}, 0.6);
    CHECK(near(judged.chance_gained, 0.530795));
    CHECK(near(judged.chance_lost, 0.046592, 2e-6));
    // 2.0 with growth 0.5, SE 0.3: 1.5 left, SD sqrt(0.16 + 0.09) = 0.5; Phi((1.5 - 0.6) / 0.5) = Phi(1.8) = 0.964070.
    const auto grown = judge_known_change({2.0, 0.16}, 0.6, 0.5, 0.3);
    CHECK(near(grown.likely.value, 1.5));
    CHECK(near(grown.likely.standard_error, 0.5));
    CHECK(near(grown.chance_gained, 0.964070));
}

TEST_CASE("the verdict of a change and the words' rule for directions never part") {
    for (double mean = -3; mean <= 3; mean += 0.05) {
        const auto judged = judge_known_change({mean, 0.49}, 0.6);
        const auto said = verdict_of(judged.chance_gained, judged.chance_lost);
        CHECK((judged.verdict == ChangeVerdict::gained) == (said == EffectDirection::more));
        CHECK((judged.verdict == ChangeVerdict::lost) == (said == EffectDirection::less));
    }
}
