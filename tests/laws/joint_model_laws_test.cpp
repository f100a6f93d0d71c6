// How often intervals hold the truth: on simulated rosters the joint model's do as stated, and those of a mixed model on
// observed values, person-mean centred as is usual, do not.
#include "inference/joint_model.h"
#include "inference/mixed_model.h"
#include "inference/random_stream.h"

#include <doctest/doctest.h>

#include <array>
#include <cmath>

using namespace amentum;

namespace {

constexpr int athletes = 100, days = 8, predictors = 3, rosters = 30;
constexpr std::array within{0.9, 0.0, 1.2}, between{1.5, 1.0, -0.2};
constexpr std::array error{0.30, 0.40, 0.25},
    drift{0.12, 0.08, 0.10}; // of each predictor, spread between athletes 1

struct Simulated {
    RosterData joint{predictors + 1, 0, {}};
    std::array<std::vector<std::array<double, days>>, predictors + 1> observed; // by quality, athlete, day
};

Simulated simulate(std::uint64_t seed) {
    RandomStream random(seed);
    Simulated made;
    for (int i = 0; i < athletes; ++i) {
        std::array<double, predictors> level, change{};
        double velocity = 80 + 2 * random.next_normal();
        for (std::size_t k = 0; k < predictors; ++k) {
            level[k] = random.next_normal();
            velocity += between[k] * level[k];
        }
        for (auto& quality : made.observed)
            quality.push_back({});
        RosterAthlete athlete;
        int day = 0;
        for (int t = 0; t < days; ++t) {
            const int gap = t == 0 ? 0 : 20 + static_cast<int>(40 * random.next_uniform());
            day += gap;
            double gained = 0;
            RosterDay seen{day, {}};
            for (std::size_t k = 0; k < predictors; ++k) {
                change[k] += drift[k] * std::sqrt(gap / 30.0) * random.next_normal();
                gained += within[k] * change[k];
                const double value = level[k] + change[k] + error[k] * random.next_normal();
                made.observed[k + 1].back()[static_cast<std::size_t>(t)] = value;
                seen.readings.push_back({static_cast<int>(k) + 1, value});
            }
            const double value = velocity + gained + 0.8 * random.next_normal();
            made.observed[0].back()[static_cast<std::size_t>(t)] = value;
            seen.readings.push_back({0, value});
            athlete.days.push_back(std::move(seen));
        }
        made.joint.athletes.push_back(std::move(athlete));
    }
    return made;
}

MixedRows naive_rows(const Simulated& made) {
    MixedRows rows{1 + 2 * predictors, 1, {}, {}, {}, {}, {}};
    for (std::size_t i = 0; i < athletes; ++i)
        for (std::size_t t = 0; t < days; ++t) {
            rows.y.push_back(made.observed[0][i][t]);
            rows.X.push_back(1);
            std::array<double, predictors> mean{};
            for (std::size_t k = 0; k < predictors; ++k) {
                for (const double value : made.observed[k + 1][i])
                    mean[k] += value / days;
                rows.X.push_back(made.observed[k + 1][i][t] - mean[k]);
            }
            rows.X.insert(rows.X.end(), mean.begin(), mean.end());
            rows.Z.push_back(1);
            rows.group.push_back(static_cast<int>(i));
        }
    return rows;
}

struct Coverage {
    int held95 = 0, held80 = 0, all = 0;
    void add(double truth, double value, double standard_error) {
        ++all;
        held95 += std::abs(value - truth) <= z95 * standard_error;
        held80 += std::abs(value - truth) <= z80 * standard_error;
    }
    double share95() const { return static_cast<double>(held95) / all; }
    double share80() const { return static_cast<double>(held80) / all; }
};

} // namespace

TEST_CASE(
    "what goes with velocity within an athlete: stated coverage by the joint model, not by observed values") {
    const RosterPriors priors{std::vector<Estimate>(predictors, {0, 3}),
                              std::vector<Estimate>(predictors, {0, 3})};
    Coverage joint, joint_between, naive;
    for (int roster = 1; roster <= rosters; ++roster) {
        const Simulated made = simulate(static_cast<std::uint64_t>(roster));
        const auto fit = fit_joint_model(made.joint, priors);
        REQUIRE(fit);
        const auto mixed = fit_mixed_model(naive_rows(made), RandomShape::diagonal, Likelihood::restricted);
        REQUIRE(mixed);
        for (std::size_t k = 0; k < predictors; ++k) {
            joint.add(within[k], fit->within[k].value, fit->within[k].standard_error);
            joint_between.add(between[k], fit->between[k].value, fit->between[k].standard_error);
            naive.add(within[k], mixed->beta[1 + k], mixed->standard_error[1 + k]);
        }
    }
    MESSAGE("95 % intervals hold the truth: joint model "
            << 100 * joint.share95() << " % within, " << 100 * joint_between.share95()
            << " % between; observed values " << 100 * naive.share95() << " %");
    MESSAGE("80 % intervals: joint model " << 100 * joint.share80() << " % within, "
                                           << 100 * joint_between.share80() << " % between; observed values "
                                           << 100 * naive.share80() << " %");
    // 90 intervals: the share of a true 95 % lies above 0.95 - 4 sqrt(0.95 x 0.05 / 90) = 0.858 but once in 30,000 times.
    CHECK(joint.share95() > 0.858);
    CHECK(joint_between.share95() > 0.858);
    CHECK(joint.share80() > 0.8 - 4 * std::sqrt(0.8 * 0.2 / 90));
    CHECK(joint.share80() < 0.8 + 4 * std::sqrt(0.8 * 0.2 / 90));
    CHECK(naive.share95() < 0.6); // a third of the truths is 0, which even a slope too close to zero holds
}

TEST_CASE("more athletes settle a slope, few leave it to the prior") {
    const RosterPriors priors{std::vector<Estimate>(predictors, {0, 1}),
                              std::vector<Estimate>(predictors, {0, 1})};
    RosterData few = simulate(7).joint, many = few;
    few.athletes.resize(12);
    const auto a = fit_joint_model(few, priors), b = fit_joint_model(many, priors);
    REQUIRE(a);
    REQUIRE(b);
    for (std::size_t k = 0; k < predictors; ++k) {
        CHECK(b->within_learned[k] > a->within_learned[k]);
        CHECK(a->within_learned[k] > -0.2);
        CHECK(b->within_learned[k] <= 1);
    }
}
