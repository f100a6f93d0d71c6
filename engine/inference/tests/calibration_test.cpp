#include "inference/calibration.h"
#include "inference/simulated_roster.h"

#include <doctest/doctest.h>

#include <cmath>

using namespace amentum;

TEST_CASE("the interval of a chance: worked examples of the score method") {
    // [Newcombe1998, table I, method 3], from memory; R 4.2's prop.test(correct = FALSE) answers the same.
    const struct {
        int held, all;
        double low, high;
    } examples[] = {{81, 263, 0.2553, 0.3662},
                    {15, 148, 0.0624, 0.1605},
                    {0, 20, 0.0000, 0.1611},
                    {1, 29, 0.0061, 0.1718}};
    for (const auto& [held, all, low, high] : examples) {
        const Interval chance = chance_interval(held, all);
        CAPTURE(held);
        CHECK(std::abs(chance.low - low) < 5e-5);
        CHECK(std::abs(chance.high - high) < 5e-5);
    }
}

TEST_CASE("coverage counts what lies inside, and the transform is the forecast's own chance") {
    // z of 0.5, 0.8, 0.95: 0.674490, 1.281552, 1.959964.
    std::vector<HeldForecast> forecasts;
    for (const double z : {-2.5, -1.5, -0.5, 0.0, 0.6, 1.0, 1.9, 2.1})
        forecasts.push_back({{10, 4}, 10 + 2 * z, {10, 4}});
    CHECK(count_coverage(forecasts, 0.5).held == 3);
    CHECK(count_coverage(forecasts, 0.8).held == 4);
    CHECK(count_coverage(forecasts, 0.95).held == 6);
    CHECK(count_coverage(forecasts, 0.95).all == 8);
    const auto u = integral_transform(forecasts);
    CHECK(u[3] == doctest::Approx(0.5));
    CHECK(u[5] == doctest::Approx(0.841344746).epsilon(1e-8)); // [AbramowitzStegun, table 26.1]
}

TEST_CASE("evenness: chi-squared at its tabled limits") {
    // Ten bins, nine degrees of freedom: 16.919 at 5 % [AbramowitzStegun, table 26.8]. 100 values, counts 10 but for two:
    // (d^2 + d^2) / 10 with d = 9: 16.2; with d = 10: 20.
    const auto with_excess = [](int d) {
        std::vector<double> values;
        for (int bin = 0; bin < 10; ++bin)
            for (int i = 0; i < 10 + (bin == 0 ? d : bin == 9 ? -d : 0); ++i)
                values.push_back((bin + 0.5) / 10);
        return check_uniform(values, 10);
    };
    CHECK(with_excess(0).chance == doctest::Approx(1));
    CHECK(with_excess(9).chance > 0.05);
    CHECK(with_excess(10).chance < 0.05);
    CHECK(with_excess(10).counts.front() == 20);
    // Counts 13, 13, 3, 3 and 8 six times: 12.5; R's pchisq(12.5, 9, lower = FALSE).
    std::vector<double> uneven;
    for (const int count : {13, 13, 3, 3, 8, 8, 8, 8, 8, 8}) {
        const double middle =
            (static_cast<double>(uneven.empty() ? 0 : std::floor(uneven.back() * 10) + 1) + 0.5) / 10;
        uneven.insert(uneven.end(), static_cast<std::size_t>(count), middle);
    }
    CHECK(check_uniform(uneven, 10).chance == doctest::Approx(0.186565974858).epsilon(1e-10));
    const double edge[] = {0.0, 1.0};
    CHECK(check_uniform(edge, 10).counts.back() == 1);
}

TEST_CASE("scores are compared pair by pair") {
    // CRPS of N(0, 1) at 0 is 0.2336949773, at 1.5 0.9944240040 [Gneiting2007].
    const std::vector<HeldForecast> forecasts{{{0, 1}, 0, {-1.5, 1}}, {{5, 1}, 5, {3.5, 1}}};
    const auto scores = compare_scores(forecasts);
    CHECK(scores.ours == doctest::Approx(0.2336949773).epsilon(1e-9));
    CHECK(scores.rival == doctest::Approx(0.9944240040).epsilon(1e-9));
    CHECK(scores.share.value == doctest::Approx(1 - 0.2336949773 / 0.9944240040).epsilon(1e-8));
    CHECK(scores.share.standard_error == doctest::Approx(0).epsilon(1e-6)); // the two pairs say the same
    // A third pair where both score alike: ratio (2 x 0.23369 + 0.23369) / (2 x 0.99442 + 0.23369) = 0.315443; differences
    // -0.079989 twice and 0.159978; sum of squares 0.038389, over 2, over 3, its root over the rival's mean 0.740848.
    auto more = forecasts;
    more.push_back({{1, 1}, 1, {1, 1}});
    const auto three = compare_scores(more);
    CHECK(three.share.value == doctest::Approx(1 - 0.315442).epsilon(1e-4));
    CHECK(three.share.standard_error == doctest::Approx(0.107969).epsilon(1e-4));
}

TEST_CASE("a simulated roster keeps the design, follows its seed, and has the slopes it was given") {
    RosterData design{2, 0, {}, 0, {0, 0}};
    for (int i = 0; i < 400; ++i)
        design.athletes.push_back({{}, {{0, {{0, 0.0, 1, 0}, {1, 0.0}}}, {30, {{0, 0.0, 1, 1}, {1, 0.0}}}}});
    RosterMode mode{2, 0, 0, {30, 5}, {2, 0.5}, {}, {}, {}, {0, 0}, {{0, 0}, {0, 0}}, {0.4, 0}};
    // Means; within L, slope, rest; between; errors; sessions: almost no error, so that changes show the slope.
    mode.phi = {0,
                0,
                std::log(0.5),
                0.3,
                std::log(1e-4),
                std::log(1.0),
                0.5,
                std::log(0.2),
                std::log(1e-8),
                std::log(1e-8),
                std::log(0.04)};
    const double given[] = {1.7};
    const RosterData made = simulate_roster(design, mode, given, 5);
    REQUIRE(made.athletes.size() == 400);
    double xx = 0, xy = 0, shift = 0;
    for (const auto& athlete : made.athletes)
        shift += (athlete.days[1].readings[0].value - athlete.days[0].readings[0].value) / 400;
    for (const auto& athlete : made.athletes) {
        const double x = athlete.days[1].readings[1].value - athlete.days[0].readings[1].value;
        xx += x * x;
        xy += x * (athlete.days[1].readings[0].value - athlete.days[0].readings[0].value - shift);
    }
    CHECK(xy / xx == doctest::Approx(1.7).epsilon(0.05)); // rest 0.01 x 2 against x of 0.25: SE 0.004
    CHECK(std::sqrt(xx / 400) ==
          doctest::Approx(0.25).epsilon(0.15)); // L 0.5 in units of 0.5; 4 SE of 400: 0.14
    CHECK(simulate_roster(design, mode, given, 5).athletes[7].days[1].readings[0].value ==
          made.athletes[7].days[1].readings[0].value);
    CHECK(simulate_roster(design, mode, given, 6).athletes[7].days[1].readings[0].value !=
          made.athletes[7].days[1].readings[0].value);
}
