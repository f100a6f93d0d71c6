// The trajectory of the Nile series against other programs.
//
// Values: R 4.2.2 by the recipe trajectory.R beside this file (dense generalised least squares with a flat
// level; no filter in it), equal to statsmodels 0.13.5 UnobservedComponents(use_exact_diffuse=True) to the
// digits listed. The variances at maximum likelihood by R's optim on that likelihood; StructTS gives
// 15098.58, 1469.15 for the whole series. The error and drift variances 15099 and 1469.1 are those of
// [DurbinKoopman2012, section 2.2]. When Rscript is installed the recipe is run again and every number it
// prints is compared.
#include "inference/roster_variances.h"
#include "nile_series.h"

#include <doctest/doctest.h>

#include <cmath>
#include <cstdio>
#include <map>
#include <sstream>
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
    return out;
}

std::map<std::string, double> answers_of_r() {
    std::map<std::string, double> out;
    const std::string command = std::string("Rscript --vanilla '") + AMENTUM_SOURCE_DIR +
                                "/tests/independent_program/trajectory.R' 2>/dev/null";
    FILE* pipe = popen(command.c_str(), "r");
    std::string text;
    char room[256];
    while (pipe && std::fgets(room, sizeof room, pipe))
        text += room;
    if (pipe)
        pclose(pipe);
    std::istringstream lines(text);
    std::string name;
    for (double value; lines >> name >> value;)
        out[name] = value;
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
    const auto r = answers_of_r();
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
    // StructTS stops early and starts from a large variance instead of an exact one: nearly the same.
    CHECK(relative(whole.error, r.at("structts_error")) < 1e-4);
    CHECK(relative(whole.drift, r.at("structts_drift")) < 1e-4);
}
