// Simulation-based calibration of the joint model [Talts2018]: truth drawn from the prior, data from the truth;
// where the truth lies in the posterior is then uniform. Slopes within athletes are drawn from the priors they are fitted
// with; all other numbers are fixed at values the weak priors hold likely.
#include "inference/joint_check.h"
#include "simulated_rosters.h"

#include <doctest/doctest.h>

#include <numbers>
#include <string>

using namespace amentum;

namespace {

constexpr std::size_t predictors = 2;
const RosterPriors priors{std::vector<Estimate>(predictors, {0.5, 0.5}),
                          std::vector<Estimate>(predictors, {1, 0.5})};

// Changes of the two qualities are independent, so that the two slopes of a roster nearly are.
World drawn_world(int athletes, int days, RandomStream& random) {
    World world{athletes, days, 20, 800, {}, {}, {0.3, 0.3}, {0.25, 0.25}};
    world.velocity_error = 0.6;
    world.own_level = 2;
    world.own_slopes = 0.25; // a tenth of velocity's spread here: what the stated error allows for
    world.between_changes = 0;
    for (std::size_t k = 0; k < predictors; ++k) {
        world.within.push_back(priors.within[k].value +
                               priors.within[k].standard_error * random.next_normal());
        world.between.push_back(priors.between[k].value +
                                priors.between[k].standard_error * random.next_normal());
    }
    return world;
}

struct Drawn {
    double truth;
    Estimate estimate;
};

using Fit = std::function<std::optional<std::vector<Estimate>>(const RosterData&)>;

std::vector<Drawn> simulations(std::size_t count, int athletes, int days, const Fit& fit) {
    std::vector<std::vector<Drawn>> by_roster(count);
    on_two_threads(count, [&](std::size_t i) {
        RandomStream random(seed_from(i + 1, "truth of a roster"));
        const World world = drawn_world(athletes, days, random);
        if (const auto within = fit(simulate_roster(world, i + 1).joint))
            for (std::size_t k = 0; k < predictors; ++k)
                by_roster[i].push_back({world.within[k], (*within)[k]});
    });
    std::vector<Drawn> all;
    for (const auto& some : by_roster)
        all.insert(all.end(), some.begin(), some.end());
    REQUIRE(all.size() == count * predictors); // none refused: leaving some out would choose
    return all;
}

// `width`: of the stated SD, 1 as stated.
double chi_squared(const std::vector<Drawn>& drawn, std::size_t bins, double width) {
    std::vector<double> count(bins, 0.0);
    for (const auto& [truth, estimate] : drawn) {
        const double at = normal_cdf((truth - estimate.value) / (width * estimate.standard_error));
        ++count[std::min(bins - 1, static_cast<std::size_t>(at * static_cast<double>(bins)))];
    }
    const double expected = static_cast<double>(drawn.size()) / static_cast<double>(bins);
    double sum = 0;
    for (const double each : count)
        sum += (each - expected) * (each - expected) / expected;
    return sum;
}

// P(chi-squared of odd `freedom` > x) [AbramowitzStegun, 26.4.4].
double chance_beyond(double x, int freedom) {
    const double root = std::sqrt(x);
    double term = root, sum = 0;
    for (int r = 1; r <= (freedom - 1) / 2; ++r) {
        sum += term;
        term *= x / (2 * r + 1);
    }
    return 2 * normal_cdf(-root) + 2 * std::exp(-x / 2) / std::sqrt(2 * std::numbers::pi) * sum;
}

void tell(const std::string& what, const std::vector<Drawn>& drawn) {
    HeldTruths coverage;
    double square = 0;
    for (const auto& [truth, estimate] : drawn) {
        coverage.add(truth, estimate);
        square += std::pow((truth - estimate.value) / estimate.standard_error, 2) /
                  static_cast<double>(drawn.size());
    }
    MESSAGE(what << ": usual SD " << coverage.usual_error() << " (prior 0.5), misses are "
                 << std::sqrt(square) << " stated SDs; 95 % " << 100 * coverage.share95() << ", 80 % "
                 << 100 * coverage.share80());
}

} // namespace

TEST_CASE("chi-squared of 19 degrees: tabled point, so that p values below can be believed") {
    // qchisq(0.9999, 19) = 50.79549 by R 4.2; qchisq(0.95, 19) = 30.144 [AbramowitzStegun, table 26.8].
    CHECK(chance_beyond(50.79549, 19) == doctest::Approx(1e-4).epsilon(1e-5));
    CHECK(chance_beyond(30.1435, 19) == doctest::Approx(0.05).epsilon(1e-4));
}

TEST_CASE("200 rosters of 60 athletes: where the true slope lies in the stated normal is uniform") {
    const auto drawn =
        simulations(200, 60, 8, [](const RosterData& data) -> std::optional<std::vector<Estimate>> {
            const auto fit = fit_joint_model(data, priors);
            return fit ? std::optional(fit->within) : std::nullopt;
        });
    const double as_stated = chi_squared(drawn, 20, 1), narrow = chi_squared(drawn, 20, 0.7);
    tell("60 athletes, quick fit", drawn);
    MESSAGE("chi-squared of 20 bins " << as_stated << ", p " << chance_beyond(as_stated, 19)
                                      << "; of SDs 30 % short " << narrow << ", p "
                                      << chance_beyond(narrow, 19));
    // Were all well, a change of the random numbers would fail here once in 10,000 times.
    CHECK(chance_beyond(as_stated, 19) > 1e-4);
    CHECK(chance_beyond(narrow, 19) < 1e-4); // the same check refuses a posterior 30 % too narrow
}

TEST_CASE("40 rosters of 30 athletes, sampled: the same, and what the quick fit makes of them") {
    constexpr int athletes = 30, days = 6;
    const auto quick =
        simulations(40, athletes, days, [](const RosterData& data) -> std::optional<std::vector<Estimate>> {
            const auto fit = fit_joint_model(data, priors);
            return fit ? std::optional(fit->within) : std::nullopt;
        });
    const auto sampled =
        simulations(40, athletes, days, [](const RosterData& data) -> std::optional<std::vector<Estimate>> {
            const auto fit = fit_joint_model(data, priors);
            if (!fit)
                return std::nullopt;
            const auto check = check_joint_fit(data, priors, *fit, {}, {200, 100, 150, true});
            return check ? std::optional(check->within) : std::nullopt;
        });
    tell("30 athletes, quick fit", quick);
    tell("30 athletes, sampled", sampled);
    const double quick_bins = chi_squared(quick, 10, 1), bins = chi_squared(sampled, 10, 1);
    MESSAGE("chi-squared of 10 bins: quick " << quick_bins << ", p " << chance_beyond(quick_bins, 9)
                                             << "; sampled " << bins << ", p " << chance_beyond(bins, 9));
    CHECK(chance_beyond(bins, 9) > 1e-4); // once in 10,000 times when all is well
}
