// Errors pooled and told apart, against other programs: R 4.2.2 (repeats.R) and the Nile's printed log-likelihood.
#include "measurement/test_error_of_days.h"
#include "nile_series.h"

#include <doctest/doctest.h>

#include <cmath>
#include <numbers>

namespace amentum {
namespace {

void check_near(double got, double expected, double tolerance) {
    CAPTURE(got);
    CAPTURE(expected);
    CHECK(std::abs(got - expected) <= tolerance);
}

} // namespace

TEST_CASE("Pooled with a published 3 %: the posterior of R's grid of 400001 points") {
    // exp(mean), mean and SD of log, 10 % and 90 % points, share of the prior's variance
    const struct {
        double freedom, error, log_mean, log_sd, low, high, share;
    } rows[] = {{40, 0.04936103, -3.00859410, 0.10771958, 0.04311183, 0.05677962, 0.04641404},
                {3, 0.04394657, -3.12478063, 0.28621173, 0.03085187, 0.06403677, 0.32766861}};
    for (const auto& row : rows) {
        CAPTURE(row.freedom);
        const auto pooled =
            pool_with_published(0.03, likelihood_of_repeats(error_with_band(0.05, row.freedom)));
        REQUIRE(pooled);
        check_near(pooled->error, row.error, 2e-5 * row.error);
        check_near(pooled->log_mean, row.log_mean, 2e-5);
        check_near(pooled->log_sd, row.log_sd, 2e-5);
        check_near(pooled->band.low, row.low, 1e-3 * row.low);
        check_near(pooled->band.high, row.high, 1e-3 * row.high);
        check_near(pooled->share_of_prior, row.share, 1e-4);
    }
}

TEST_CASE("Nile at the printed variances: the likelihood of the differences is the diffuse one, -632.5456") {
    // [DurbinKoopman2012, chapter 2], printed by R's KFAS as -632.5456; statsmodels agrees. 99 differences.
    DaySeries series;
    for (int year = 1; year <= 100; ++year)
        series.push_back({year, nile_flow[static_cast<std::size_t>(year - 1)], 0});
    const double constant = 99 * std::log(2 * std::numbers::pi) / 2;
    check_near(log_likelihood_of_series(series, nile_error, nile_drift) - constant, -632.5456251157, 1e-8);
    // The same when part of the error is known beforehand.
    for (auto& day : series)
        day.known_variance = 5000;
    check_near(log_likelihood_of_series(series, nile_error - 5000, nile_drift) - constant, -632.5456251157,
               1e-8);
}

TEST_CASE("Ten years of the Nile with a rise of their own: the density by R's dense algebra") {
    DaySeries series; // years 1, 2, 4, ...; trend variance 400 (repeats.R)
    for (const int year : {1, 2, 4, 7, 8, 12, 13, 20, 21, 23})
        series.push_back({year, nile_flow[static_cast<std::size_t>(year - 1)], 0});
    check_near(log_likelihood_of_series(series, nile_error, nile_drift, 400), -50.865824119782, 1e-10);
}

TEST_CASE("Nile: the day error lies at the printed standard deviation, within its own interval") {
    // Square root of 15099 is 122.9; the drift, integrated out here, moves it a little.
    DaySeries series;
    for (int year = 1; year <= 100; ++year)
        series.push_back({year, nile_flow[static_cast<std::size_t>(year - 1)], 0});
    const auto error = estimate_error_of_days({series}, 100);
    REQUIRE(error);
    check_near(error->error, std::sqrt(nile_error), 6);
    CHECK(error->band.low < std::sqrt(nile_error));
    CHECK(error->band.high > std::sqrt(nile_error));
}

} // namespace amentum
