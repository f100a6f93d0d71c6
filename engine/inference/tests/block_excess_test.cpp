// The forecast without a block moves back to the mean, grows and widens by itself; excess and comparison by hand.
#include "inference/block_excess.h"

#include <doctest/doctest.h>

#include <cmath>

using namespace amentum;

namespace {

constexpr double never = 1e-18;

// Two qualities that have nothing to do with each other; the numbers of the first are given, in free form as the fit keeps them
// (inside/joint_parameters.h): means, growth, within, between, log error variances.
RosterFit fit_of(double mean, double between_sd, double error_sd, double drift_variance_30,
                 double growth_30) {
    RosterFit fit{};
    fit.error_sd = {error_sd, 1};
    fit.mode.qualities = 2;
    fit.mode.growths = 1;
    fit.mode.centre = {0, 0};
    fit.mode.unit = {1, 1};
    fit.mode.session_spread = {0, 0};
    fit.mode.phi = {mean,
                    0,
                    growth_30,
                    0,
                    std::log(0.1),
                    0,
                    std::log(std::max(drift_variance_30, never)),
                    0,
                    0,
                    std::log(between_sd * between_sd),
                    std::log(error_sd * error_sd),
                    0};
    return fit;
}

RosterAthlete tested(const std::vector<std::pair<int, double>>& results, double growth = 0) {
    RosterAthlete athlete{{}, {}, {growth}};
    for (const auto& [day, value] : results)
        athlete.days.push_back({day, {{0, value}}});
    return athlete;
}

} // namespace

TEST_CASE("regression to the mean comes with the forecast") {
    // [Barnett2005], mean 80, between 4, error 1.2: reliability 16 / 17.44 = 0.917431; first test 74: +0.495413 without any effect.
    const auto found =
        measure_block_excess(fit_of(80, 4, 1.2, 0, 0), tested({{0, 74}, {60, 76}}), {0, 50, 90}, 0);
    REQUIRE(found);
    CHECK(found->forecast.mean - 74 == doctest::Approx(0.495413).epsilon(1e-5));
    CHECK(found->excess().value == doctest::Approx(76 - 74.495413).epsilon(1e-6));
    // 16 x 1.44 / 17.44 of the state is not known, and the error of the second test: 1.321101 + 1.44.
    CHECK(found->variance == doctest::Approx(2.761101).epsilon(1e-6));
    CHECK(found->before == 0);
    CHECK(found->after == 60);
}

TEST_CASE("growth and drift since the start stand in the forecast") {
    // 60 days of growth 0.4 a 30 days and unit, 1.5 units: 1.2; drift 0.25 a 30 days: 0.5 more variance.
    const auto still =
        measure_block_excess(fit_of(80, 4, 1.2, 0, 0), tested({{0, 80}, {60, 80}}), {0, 50, 90}, 0);
    const auto grown =
        measure_block_excess(fit_of(80, 4, 1.2, 0.25, 0.4), tested({{0, 80}, {60, 80}}, 1.5), {0, 50, 90}, 0);
    REQUIRE(still);
    REQUIRE(grown);
    CHECK(grown->forecast.mean - still->forecast.mean == doctest::Approx(1.2).epsilon(1e-9));
    CHECK(grown->variance - still->variance == doctest::Approx(0.5).epsilon(1e-6));
}

TEST_CASE("which tests stand before and after") {
    const auto athlete = tested({{0, 74}, {14, 75}, {40, 77}, {60, 76}, {80, 78}});
    const auto fit = fit_of(80, 4, 1.2, 0.1, 0);
    const auto first = measure_block_excess(fit, athlete, {14, 50, 90}, 0);
    const auto last = measure_block_excess(fit, athlete, {14, 28, 90, true}, 0);
    REQUIRE(first);
    REQUIRE(last);
    CHECK(first->before == 14);
    CHECK(first->before_value == 75);
    CHECK(first->after == 60);
    CHECK(last->after == 80);
    CHECK_FALSE(measure_block_excess(fit, athlete, {14, 90, 120}, 0));
    CHECK_FALSE(measure_block_excess(fit, tested({{40, 77}}), {14, 28, 90}, 0));
    CHECK_FALSE(measure_block_excess(fit, athlete, {14, 28, 90}, 1));
    // The tests during the block do not move the forecast.
    const auto without = measure_block_excess(fit, tested({{0, 74}, {14, 75}, {60, 76}}), {14, 50, 90}, 0);
    CHECK(without->forecast.mean == first->forecast.mean);
}

TEST_CASE(
    "a session's shift is taken off the result and its doubt added; an unknown session adds the spread") {
    RosterFit fit = fit_of(80, 4, 1.2, 0, 0);
    fit.mode.session_spread = {0.5, 0};
    fit.mode.phi.push_back(std::log(0.25));
    fit.mode.session_quality = {0};
    fit.mode.session = {{0.7, 0.3}};
    auto athlete = tested({{0, 74}, {60, 76}});
    const auto plain = measure_block_excess(fit, athlete, {0, 50, 90}, 0);
    athlete.days[1].readings[0].session = 0;
    const auto known = measure_block_excess(fit, athlete, {0, 50, 90}, 0);
    athlete.days[1].readings[0].session = 1;
    const auto unknown = measure_block_excess(fit, athlete, {0, 50, 90}, 0);
    CHECK(known->observed == doctest::Approx(75.3));
    CHECK(known->variance - plain->variance == doctest::Approx(0.09));
    CHECK(unknown->observed == doctest::Approx(76));
    CHECK(unknown->variance - plain->variance == doctest::Approx(0.25));
}

TEST_CASE("the comparison's mean excess and its error, by hand") {
    // Weights 1, 4, 4: mean (1 + 4 x 0.5 + 4 x 0) / 9 = 0.333333; scatter (0.444 + 4 x 0.0278 + 4 x 0.111) = 1 of 2: as errors say.
    const auto calm = estimate_comparison(std::vector<Estimate>{{1, 1}, {0.5, 0.5}, {0, 0.5}});
    CHECK(calm.athletes == 3);
    CHECK(calm.mean.value == doctest::Approx(1.0 / 3));
    CHECK(calm.mean.standard_error == doctest::Approx(1.0 / 3));
    // Two of equal error 1 at -3 and 3: scatter 18 of 1, so the error is sqrt(18 / 2) = 3 [Birge1932].
    const auto wild = estimate_comparison(std::vector<Estimate>{{-3, 1}, {3, 1}});
    CHECK(wild.mean.value == doctest::Approx(0));
    CHECK(wild.mean.standard_error == doctest::Approx(3));
}

TEST_CASE("individual responses are the scatter beyond that of the comparison, and may be none") {
    // SD^2 of {-3, -1, 1, 3} is 20/3, of {-1, 0, 1} it is 1: sqrt(17/3); variance of the difference 2 (400/9 / 3 + 1/2) = 30.6296;
    // 5.6667 -+ 1.2815516 x 5.5344 = -1.425958 and 12.759291, their roots -1.194135 and 3.572015 (Python 3.11).
    const auto found =
        estimate_individual_responses(std::vector{-3.0, -1.0, 1.0, 3.0}, std::vector{-1.0, 0.0, 1.0});
    CHECK(found.sd == doctest::Approx(2.380476));
    CHECK(found.central.low == doctest::Approx(-1.194135).epsilon(1e-5));
    CHECK(found.central.high == doctest::Approx(3.572015).epsilon(1e-5));
    const auto none =
        estimate_individual_responses(std::vector{-1.0, 0.0, 1.0}, std::vector{-3.0, -1.0, 1.0, 3.0});
    CHECK(none.sd == doctest::Approx(-2.380476));
}
