// What must hold of a test's own error whatever the numbers: its interval covers the truth as often as it says, few
// repeats fall back on the published error, and athletes who really change do not make the test look worse.
#include "inference/random_stream.h"
#include "measurement/test_error_of_days.h"

#include <doctest/doctest.h>

#include <cmath>

namespace amentum {
namespace {

// Truths drawn from what is believed before the repeats: log error ~ N(log published, 0.5).
double drawn_error(RandomStream& random, double published) {
    return published * std::exp(sd_of_log_published_error * random.next_normal());
}

RepeatTable simulated_trials(RandomStream& random, int rows, int trials, double error) {
    RepeatTable table;
    for (int i = 0; i < rows; ++i) {
        const double level = 10 * random.next_normal();
        table.emplace_back();
        for (int j = 0; j < trials; ++j)
            table.back().push_back(level + 0.7 * j + error * random.next_normal());
    }
    return table;
}

// `athletes` levels that wander by `in_a_month` (one SD) and rise or fall at a pace, tested every `gap` days.
std::vector<DaySeries> simulated_days(RandomStream& random, int athletes, int days, int gap, double error,
                                      double in_a_month, double pace_a_month = 0) {
    std::vector<DaySeries> all;
    for (int i = 0; i < athletes; ++i) {
        double level = 10 * random.next_normal();
        const double pace = pace_a_month * random.next_normal() / 30;
        all.emplace_back();
        for (int j = 0; j < days; ++j) {
            all.back().push_back({j * gap, level + pace * j * gap + error * random.next_normal(), 0});
            level += in_a_month * std::sqrt(gap / 30.0) * random.next_normal();
        }
    }
    return all;
}

bool holds(const Interval& band, double truth) {
    return band.low <= truth && truth <= band.high;
}

} // namespace

TEST_CASE("The 80 % interval of the pooled trial error holds the truth in 80 of 100 gyms") {
    RandomStream random(20260601);
    int held = 0;
    constexpr int gyms = 1000;
    for (int gym = 0; gym < gyms; ++gym) {
        const double truth = drawn_error(random, 2);
        const auto own = estimate_error_of_trials(simulated_trials(random, 5, 3, truth));
        REQUIRE(own);
        held += holds(pool_with_published(2, likelihood_of_repeats(own->error))->band, truth);
    }
    CAPTURE(held);
    CHECK(held > 760); // 800 with a standard deviation of 12.6
    CHECK(held < 840);
}

TEST_CASE("The chi-squared interval of a gym's own trial error holds the truth in 80 of 100 gyms") {
    RandomStream random(7);
    int held = 0;
    for (int gym = 0; gym < 1000; ++gym)
        held += holds(estimate_error_of_trials(simulated_trials(random, 8, 3, 1.5))->error.band, 1.5);
    CAPTURE(held);
    CHECK(held > 760);
    CHECK(held < 840);
}

TEST_CASE("The 80 % interval of the pooled day error holds the truth in 80 of 100 gyms, whatever the drift") {
    RandomStream random(11);
    int held = 0;
    constexpr int gyms = 400;
    for (int gym = 0; gym < gyms; ++gym) {
        const double truth = drawn_error(random, 2);
        const double drift = 2 * 0.03 * std::pow(10 / 0.03, random.next_uniform()); // as it is believed to be
        const double pace = 2 * 0.03 * std::pow(100, random.next_uniform());
        const auto days = simulated_days(random, 6, 4, 14, truth, drift, pace);
        held += holds(pool_with_published(2, likelihood_of_days(days, 2))->band, truth);
    }
    CAPTURE(held);
    CHECK(held > 290); // 320 with a standard deviation of 8
    CHECK(held < 350);
}

TEST_CASE("Without repeats the published error stands; a few move it a little, many replace it") {
    const auto none = pool_with_published(2, [](double) { return 0.0; });
    REQUIRE(none);
    CHECK(none->error == doctest::Approx(2).epsilon(1e-6));
    CHECK(none->band.low == doctest::Approx(2 * std::exp(-0.5 * z80)).epsilon(2e-3));
    CHECK(none->band.high == doctest::Approx(2 * std::exp(0.5 * z80)).epsilon(2e-3));
    CHECK(none->share_of_prior == doctest::Approx(1).epsilon(1e-3));
    double before = 2;
    for (const double freedom : {1.0, 3.0, 10.0, 40.0, 200.0, 5000.0}) {
        const auto pooled = pool_with_published(2, likelihood_of_repeats(error_with_band(4, freedom)));
        CHECK(pooled->error > before);
        CHECK(pooled->error < 4.001);
        before = pooled->error;
    }
    CHECK(before == doctest::Approx(4).epsilon(1e-3));
    const auto unread = pool_with_published(2, likelihood_of_repeats({0, 12, {0, 0}})); // repeats all alike
    CHECK(unread->error == doctest::Approx(2).epsilon(1e-6));
}

TEST_CASE("Athletes who change by three day errors a month do not make the day error look larger") {
    RandomStream random(3);
    const auto days = simulated_days(random, 60, 10, 7, 2, 6);
    const auto own = estimate_error_of_days(days, 2);
    REQUIRE(own);
    CHECK(holds({own->error * 0.85, own->error * 1.15}, 2.0));
    // The plain typical error of neighbouring days holds the change too: sqrt(2^2 + 6^2 7/30 / 2) = 2.86.
    double squares = 0;
    int differences = 0;
    for (const auto& series : days)
        for (std::size_t i = 1; i < series.size(); ++i, ++differences)
            squares += std::pow(series[i].value - series[i - 1].value, 2);
    CHECK(std::sqrt(squares / differences / 2) > 2.6);
}

TEST_CASE(
    "Athletes who grow at a pace of their own for two years make the day error neither larger nor smaller") {
    RandomStream random(13);
    const auto own = estimate_error_of_days(simulated_days(random, 40, 12, 60, 2, 0.5, 1.5), 2);
    REQUIRE(own);
    CHECK(holds({own->error * 0.9, own->error * 1.1}, 2.0));
}

TEST_CASE("Learning from trial to trial is not error, and is found") {
    RandomStream random(5);
    const auto own = estimate_error_of_trials(simulated_trials(random, 300, 3, 1));
    REQUIRE(own);
    CHECK(own->error.error == doctest::Approx(1).epsilon(0.08));
    CHECK(own->learning[1].value == doctest::Approx(1.4).epsilon(0.2));
    CHECK(estimate_error_of_trials(simulated_trials(random, 300, 3, 1), Learning::left_in)->error.error >
          1.1);
}

TEST_CASE("Order of athletes and a shift of one of them change nothing") {
    RandomStream random(9);
    auto table = simulated_trials(random, 7, 3, 1);
    const auto before = estimate_error_of_trials(table);
    std::swap(table[1], table[5]);
    for (double& value : table[2])
        value += 100;
    CHECK(estimate_error_of_trials(table)->error.error == doctest::Approx(before->error.error));
}

} // namespace amentum
