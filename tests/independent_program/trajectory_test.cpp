// The trajectory of the Nile series against other programs.
//
// Values: R 4.2.2 by the recipe trajectory.R beside this file (dense generalised least squares with a flat
// level; no filter in it), equal to statsmodels 0.13.5 UnobservedComponents(use_exact_diffuse=True) to the
// digits listed. The variances at maximum likelihood by R's optim on that likelihood; StructTS gives
// 15098.58, 1469.15 for the whole series. The error and drift variances 15099 and 1469.1 are those of
// [DurbinKoopman2012, section 2.2]. When Rscript is installed the recipe is run again and every number it
// prints is compared.
#include "answers_of_r.h"
#include "inference/roster_variances.h"
#include "nile_series.h"

#include <doctest/doctest.h>

#include <cmath>
#include <map>
#include <string>

using namespace amentum;

namespace {

const std::vector<int> irregular_years{1, 2, 3, 6, 10, 11, 18, 31, 32, 56, 57, 58, 59, 81, 100};

void near(double value, double expected, double tolerance) {
    CAPTURE(value);
    CAPTURE(expected);
    CHECK(std::abs(value - expected) < tolerance);
}

double relative(double value, double expected) {
    return std::abs(value / expected - 1);
}

double nile_likelihood(double error, double drift) {
    auto values = nile_in(all_nile_years());
    for (auto& value : values)
        value.variance = error;
    return estimate_trajectory(values, drift).log_likelihood;
}

// Central differences of fourth order.
double slope(const auto& f, double x, double h) {
    return (8 * (f(x + h) - f(x - h)) - (f(x + 2 * h) - f(x - 2 * h))) / (12 * h);
}

struct Slopes {
    double error, drift;
};
Slopes nile_slopes() {
    return {slope([](double error) { return nile_likelihood(error, nile_drift); }, nile_error, 100),
            slope([](double drift) { return nile_likelihood(nile_error, drift); }, nile_drift, 10)};
}

struct FromOthers {
    LeftOut first;
    double density = 0;
};
FromOthers nile_from_others() {
    const auto all = leave_one_out(nile_in(all_nile_years()), nile_drift, StateOnDay{1000, 1e5});
    FromOthers from{all.front()};
    for (const auto& one : all)
        from.density += one.log_density;
    return from;
}

// The engine's own answer to each name that trajectory.R prints.
std::map<std::string, double> engine_answers() {
    std::map<std::string, double> out;
    const auto all = estimate_trajectory(nile_in(all_nile_years()), nile_drift);
    out["loglik"] = all.log_likelihood;
    for (const int year : {1871, 1890, 1898, 1899, 1970})
        out["smoothed_" + std::to_string(year)] = all.state_on(year - 1870).mean;
    for (const int year : {1871, 1890, 1970})
        out["variance_" + std::to_string(year)] = all.state_on(year - 1870).variance;
    out["filtered_1871"] = all.points[0].filtered.mean;
    out["filtered_1872"] = all.points[1].filtered.mean;
    const auto few = estimate_trajectory(nile_in(irregular_years), nile_drift);
    out["irregular_loglik"] = few.log_likelihood;
    out["irregular_first"] = few.points.front().smoothed.mean;
    out["irregular_last"] = few.points.back().smoothed.mean;
    const auto gaps = estimate_trajectory(nile_in(nile_years_with_gaps()), nile_drift);
    for (const int t : {20, 30, 70})
        out["gaps_" + std::to_string(t)] = gaps.state_on(t).mean;
    out["gaps_variance_30"] = gaps.state_on(30).variance;
    out["proper_loglik"] =
        estimate_trajectory(nile_in(all_nile_years()), nile_drift, StateOnDay{1000, 1e5}).log_likelihood;
    const auto others = nile_from_others();
    out["others_mean_1"] = others.first.expected.mean;
    out["others_sd_1"] = std::sqrt(others.first.expected.variance);
    out["others_density"] = others.density;
    return out;
}

} // namespace

TEST_CASE("Nile, exact diffuse start: likelihood, states and innovations") {
    const auto nile = estimate_trajectory(nile_in(all_nile_years()), nile_drift);
    near(nile.log_likelihood, -632.5456251157, 1e-8);
    const auto smoothed = [&](int year) { return nile.state_on(year - 1870); };
    near(smoothed(1871).mean, 1111.668319127, 1e-6);
    near(smoothed(1890).mean, 1073.092452483, 1e-6);
    near(smoothed(1898).mean, 999.585218705, 1e-6);
    near(smoothed(1899).mean, 950.930086740, 1e-6);
    near(smoothed(1970).mean, 798.370292608, 1e-6);
    near(smoothed(1871).variance, 4032.157942, 1e-5);
    near(smoothed(1890).variance, 2326.769596, 1e-5);
    near(smoothed(1970).variance, 4032.157942, 1e-5);
    near(nile.points.back().innovation_variance, 20600.257942, 1e-5);
    near(nile.points[0].filtered.mean, 1120, 1e-9);
    near(nile.points[1].filtered.mean, 1140.927840, 1e-6);
    near(nile.points[1].innovation, 40, 1e-6);
    near(nile.points[2].innovation, -177.927840, 1e-6);
    near(nile.points[3].innovation, 137.201470, 1e-6);
}

TEST_CASE("Nile, irregular days and missing years") {
    const auto few = estimate_trajectory(nile_in(irregular_years), nile_drift);
    near(few.log_likelihood, -90.3498138382, 1e-8);
    near(few.points.front().smoothed.mean, 1086.394418, 1e-5);
    near(few.points.back().smoothed.mean, 751.477802, 1e-5);
    const auto gaps = estimate_trajectory(nile_in(nile_years_with_gaps()), nile_drift);
    near(gaps.state_on(20).mean, 999.712684, 1e-5);
    near(gaps.state_on(30).mean, 903.421103, 1e-5);
    near(gaps.state_on(70).mean, 837.177324, 1e-5);
    near(gaps.state_on(30).variance, 9715.005902, 1e-5);
}

TEST_CASE("Nile, proper prior N(1000, 1e5) on the first year") {
    const auto nile = estimate_trajectory(nile_in(all_nile_years()), nile_drift, StateOnDay{1000, 1e5});
    near(nile.log_likelihood, -639.3007238, 1e-6);
}

TEST_CASE("Nile, each year from all the others") {
    const auto others = nile_from_others();
    near(others.density, -631.5233367, 1e-6);
    near(others.first.expected.mean, 1102.968162, 1e-6);
    near(std::sqrt(others.first.expected.variance), 142.525087, 1e-6);
    // Diffuse start and two tests: each is expected where the other was, its error and the walk between added.
    const std::vector<DatedValue> two{{0, 80, 4}, {10, 83, 9}};
    const auto left = leave_one_out(two, 0.5);
    near(left[0].expected.mean, 83, 1e-12);
    near(left[0].expected.variance, 9 + 5 + 4, 1e-12);
    near(left[1].expected.mean, 80, 1e-12);
}

TEST_CASE("Nile, slopes of the likelihood at the printed variances, which are rounded from its top") {
    const auto slopes = nile_slopes();
    near(slopes.error, -5.9114e-8, 2e-10);
    near(slopes.drift, -4.202e-8, 2e-10);
}

TEST_CASE("Nile, variances at maximum likelihood") {
    const auto whole = estimate_series_variances(nile_in(all_nile_years()));
    CHECK(relative(whole.error, 15098.52) < 1e-4);
    CHECK(relative(whole.drift, 1469.18) < 1e-4);
    near(whole.log_likelihood, -632.5456251030, 1e-8);
    const auto gaps = estimate_series_variances(nile_in(nile_years_with_gaps()));
    CHECK(relative(gaps.error, 17899.84) < 1e-4);
    CHECK(relative(gaps.drift, 685.82) < 1e-4);
    near(gaps.log_likelihood, -380.00772912, 1e-6);
    auto values = nile_in(nile_years_with_gaps());
    for (auto& value : values)
        value.variance = gaps.error;
    near(estimate_trajectory(values, gaps.drift).state_on(30).mean, 915.22225, 1e-2);
}

TEST_CASE("R is asked again when it is installed") {
    const auto r = answers_of_r("trajectory.R");
    if (r.empty()) {
        MESSAGE("SKIPPED: Rscript is not installed; the listed values above were checked, R itself was not "
                "asked.");
        return;
    }
    for (const auto& [name, value] : engine_answers()) {
        CAPTURE(name);
        REQUIRE(r.contains(name));
        CHECK(relative(value, r.at(name)) < 1e-10);
    }
    const auto whole = estimate_series_variances(nile_in(all_nile_years()));
    CHECK(relative(whole.error, r.at("ml_error")) < 1e-5);
    CHECK(relative(whole.drift, r.at("ml_drift")) < 1e-5);
    const auto gaps = estimate_series_variances(nile_in(nile_years_with_gaps()));
    CHECK(relative(gaps.error, r.at("ml_gaps_error")) < 1e-5);
    CHECK(relative(gaps.drift, r.at("ml_gaps_drift")) < 1e-5);
    near(nile_slopes().error, r.at("slope_error"), 2e-10);
    near(nile_slopes().drift, r.at("slope_drift"), 2e-10);
    // StructTS stops early and starts from a large variance instead of an exact one: nearly the same.
    CHECK(relative(whole.error, r.at("structts_error")) < 1e-4);
    CHECK(relative(whole.drift, r.at("structts_drift")) < 1e-4);
    CHECK(relative(gaps.error, r.at("structts_gaps_error")) < 1e-3);
    CHECK(relative(gaps.drift, r.at("structts_gaps_drift")) < 1e-3);
    auto values = nile_in(nile_years_with_gaps());
    for (auto& value : values)
        value.variance = gaps.error;
    near(estimate_trajectory(values, gaps.drift).state_on(30).mean, r.at("structts_gaps_30"), 0.5);
}
