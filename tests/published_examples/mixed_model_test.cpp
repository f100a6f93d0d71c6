// Mixed models whose fits are published or can be done by hand: the numbers are lme4 1.1-31's and nlme 3.1-162's, converged
// tighter than their defaults; sleepstudy's are also the printed ones of Bates2015.
#include "inference/mixed_model.h"

#include "mixed_model_data.h"

#include <boost/math/tools/minima.hpp>
#include <doctest/doctest.h>

#include <cmath>

using namespace amentum;
using namespace amentum::mixed_data;

namespace {

// One group after another, `each` rows a group.
MixedRows rows_of(const std::vector<double>& y, int each) {
    MixedRows rows{0, 0, y, {}, {}, {}, {}};
    for (std::size_t i = 0; i < y.size(); ++i)
        rows.group.push_back(static_cast<int>(i) / each);
    return rows;
}

MixedRows constant(MixedRows rows) {
    rows.fixed = rows.random = 1;
    rows.X.assign(rows.y.size(), 1);
    rows.Z = rows.X;
    return rows;
}

MixedRows line_on(MixedRows rows, const std::vector<double>& x, bool random_slope) {
    rows.fixed = 2;
    rows.random = random_slope ? 2 : 1;
    for (const double value : x) {
        rows.X.insert(rows.X.end(), {1, value});
        rows.Z.push_back(1);
        if (random_slope)
            rows.Z.push_back(value);
    }
    return rows;
}

std::vector<double> days() {
    std::vector<double> x;
    for (int i = 0; i < 180; ++i)
        x.push_back(i % 10);
    return x;
}

std::vector<double> ages() {
    std::vector<double> x;
    for (int i = 0; i < 108; ++i)
        x.push_back(8 + 2 * (i % 4));
    return x;
}

MixedFit fitted(const MixedRows& rows, RandomShape shape, Likelihood likelihood) {
    const auto fit = fit_mixed_model(rows, shape, likelihood);
    if (!fit)
        FAIL(fit.refusal().sentence);
    return *fit;
}

bool near(double value, double expected, double tolerance) {
    if (std::abs(value - expected) <= tolerance)
        return true;
    MESSAGE(value << " is not " << expected);
    return false;
}
bool near_share(double value, double expected, double share) {
    return near(value, expected, share * std::abs(expected));
}

} // namespace

TEST_CASE("sleepstudy: a line for each sleeper, intercept and slope varying together") {
    const auto rows = line_on(rows_of(reaction_ms, 10), days(), true);
    const MixedFit fit = fitted(rows, RandomShape::full, Likelihood::restricted);
    CHECK(near(fit.beta[0], 251.4051048485, 1e-6));
    CHECK(near(fit.beta[1], 10.4672859596, 1e-6));
    CHECK(near(fit.standard_error[0], 6.824556, 2e-5));
    CHECK(near(fit.standard_error[1], 1.545789, 2e-5));
    CHECK(near(fit.criterion, 1743.6282719585, 1e-6));
    CHECK(near_share(fit.covariance[0], 612.090, 2e-5));
    CHECK(near_share(fit.covariance[3], 35.07166, 2e-5));
    CHECK(near_share(fit.covariance[1], 9.60434, 2e-4));
    CHECK(near_share(fit.residual_variance, 654.9410, 2e-5));
    CHECK(near(fit.group_effects[0], 2.25857, 1e-3)); // sleeper 308
    CHECK(near(fit.group_effects[1], 9.19897, 1e-3));
    CHECK(near(fit.group_effects[2 * 8], -0.33370, 1e-3)); // sleeper 335, the ninth
    CHECK(near(fit.group_effects[2 * 8 + 1], -10.75216, 1e-3));

    const MixedFit ml = fitted(rows, RandomShape::full, Likelihood::full);
    CHECK(near(ml.log_likelihood(), -875.9696722316, 1e-6));
    CHECK(near_share(ml.covariance[0], 565.5153, 2e-5));
    CHECK(near_share(ml.covariance[3], 32.68220, 2e-5));
    CHECK(near_share(ml.covariance[1], 11.05541, 2e-4));
    CHECK(near_share(ml.residual_variance, 654.9410, 2e-5));

    const MixedFit apart = fitted(rows, RandomShape::diagonal, Likelihood::full);
    CHECK(near(apart.log_likelihood(), -876.00162757, 1e-6));
    CHECK(near_share(std::sqrt(apart.covariance[0]), 24.17127, 1e-5));
    CHECK(near_share(std::sqrt(apart.covariance[3]), 5.799409, 1e-5));
    CHECK(near_share(std::sqrt(apart.residual_variance), 25.55613, 1e-5));

    const MixedFit level =
        fitted(line_on(rows_of(reaction_ms, 10), days(), false), RandomShape::full, Likelihood::restricted);
    CHECK(near(level.log_likelihood(), -893.232542697, 1e-6));
    CHECK(near_share(level.covariance[0], 1378.17854, 1e-6));
    CHECK(near_share(level.residual_variance, 960.456577, 1e-6));
}

TEST_CASE("sleepstudy with 16 rows lost: nothing is balanced any more") {
    auto all = line_on(rows_of(reaction_ms, 10), days(), true);
    MixedRows kept{2, 2, {}, {}, {}, {}, {}};
    for (std::size_t i = 0; i < all.y.size(); ++i) {
        const int row = static_cast<int>(i) + 1; // as R counts
        if (row == 3 || row == 4 || row == 17 || (row >= 25 && row <= 28) || row == 51 ||
            (row >= 90 && row <= 95) || row == 150 || row == 180)
            continue;
        kept.y.push_back(all.y[i]);
        kept.X.insert(kept.X.end(), {all.X[2 * i], all.X[2 * i + 1]});
        kept.Z.insert(kept.Z.end(), {all.Z[2 * i], all.Z[2 * i + 1]});
        kept.group.push_back(all.group[i]);
    }
    CHECK(near(fitted(kept, RandomShape::full, Likelihood::full).log_likelihood(), -803.22860494, 1e-6));
    const MixedFit fit = fitted(kept, RandomShape::full, Likelihood::restricted);
    CHECK(near(fit.log_likelihood(), -799.02837692, 1e-6));
    CHECK(near(fit.beta[0], 252.069081, 1e-4));
    CHECK(near(fit.beta[1], 10.438286, 1e-4));
}

TEST_CASE("Orthodont: growth of the jaw, children's lines varying") {
    const MixedFit fit =
        fitted(line_on(rows_of(jaw_distance_mm, 4), ages(), true), RandomShape::full, Likelihood::restricted);
    CHECK(near(fit.beta[0], 16.7611111, 1e-7));
    CHECK(near(fit.beta[1], 0.6601851852, 1e-7));
    CHECK(near(fit.log_likelihood(), -221.31834294, 1e-6));
    CHECK(near_share(std::sqrt(fit.covariance[0]), 2.32703, 3e-5));
    CHECK(near_share(std::sqrt(fit.covariance[3]), 0.226428, 3e-5));
    CHECK(near(fit.covariance[1] / std::sqrt(fit.covariance[0] * fit.covariance[3]), -0.6093, 1e-4));
    CHECK(near_share(std::sqrt(fit.residual_variance), 1.3100396, 3e-5));

    MixedRows by_sex = rows_of(jaw_distance_mm, 4); // age from 11, girls (rows 65 on) apart
    by_sex.fixed = 4;
    by_sex.random = 2;
    for (int i = 0; i < 108; ++i) {
        const double age = ages()[static_cast<std::size_t>(i)] - 11, girl = i >= 64;
        by_sex.X.insert(by_sex.X.end(), {1, age, girl, age * girl});
        by_sex.Z.insert(by_sex.Z.end(), {1, age});
    }
    const MixedFit sexes = fitted(by_sex, RandomShape::full, Likelihood::full);
    CHECK(near(sexes.beta[0], 24.96875, 1e-6));
    CHECK(near(sexes.beta[1], 0.784375, 1e-6));
    CHECK(near(sexes.beta[2], -2.3210227, 1e-6));
    CHECK(near(sexes.beta[3], -0.3048295, 1e-6));
    CHECK(near(sexes.log_likelihood(), -213.9029754, 1e-6));
}

TEST_CASE("Dyestuff and Rail: balanced, so analysis of variance does them by hand; Dyestuff2: no variance "
          "between batches") {
    const auto batches = constant(rows_of(dyestuff_g, 5));
    const MixedFit reml = fitted(batches, RandomShape::full, Likelihood::restricted);
    CHECK(near_share(reml.covariance[0], 1764.05, 1e-7)); // (MS between - MS within) / 5
    CHECK(near_share(reml.residual_variance, 2451.25, 1e-7));
    CHECK(near(reml.log_likelihood(), -159.82713842, 1e-6));
    const MixedFit ml = fitted(batches, RandomShape::full, Likelihood::full);
    CHECK(near_share(ml.covariance[0], 1388.3333333, 1e-7));
    CHECK(near_share(ml.residual_variance, 2451.25, 1e-7));
    CHECK(near(ml.log_likelihood(), -163.66352994, 1e-6));

    const MixedFit none = fitted(constant(rows_of(dyestuff2, 5)), RandomShape::full, Likelihood::restricted);
    CHECK(none.at_zero[0]);
    CHECK(near(none.residual_variance, 13.80631, 1e-5));
    CHECK(near(none.criterion, 161.82827781, 1e-6));

    const MixedFit rails = fitted(constant(rows_of(travel_ns, 3)), RandomShape::full, Likelihood::restricted);
    CHECK(near_share(rails.covariance[0], 615.3111111, 1e-7));
    CHECK(near_share(rails.residual_variance, 16.1666667, 1e-7));
    CHECK(near(rails.log_likelihood(), -61.0885004, 1e-6));
}

TEST_CASE("Penicillin: plates crossed with samples") {
    MixedRows rows = constant(rows_of(diameter_mm, 6)); // plate by plate, samples A to F
    rows.crossed.resize(1);
    for (int i = 0; i < 144; ++i)
        rows.crossed[0].push_back(i % 6);
    const MixedFit fit = fitted(rows, RandomShape::full, Likelihood::restricted);
    CHECK(near(std::sqrt(fit.covariance[0]), 0.846704, 1e-5));
    CHECK(near(std::sqrt(fit.crossed_variance[0]), 1.931559, 1e-5));
    CHECK(near(std::sqrt(fit.residual_variance), 0.549923, 1e-5));
    CHECK(near(fit.criterion, 330.86058899, 1e-6));
}

TEST_CASE("Machines: workers, and workers on machines, which is a factor nested in them") {
    MixedRows rows{3, 1, output_score, {}, std::vector<double>(54, 1), {}, {{}}};
    for (int i = 0; i < 54; ++i) {
        const int machine = i / 18, worker = i % 18 / 3;
        rows.X.insert(rows.X.end(), {1, machine == 1 ? 1.0 : 0.0, machine == 2 ? 1.0 : 0.0});
        rows.group.push_back(worker);
        rows.crossed[0].push_back(3 * worker + machine);
    }
    const MixedFit fit = fitted(rows, RandomShape::full, Likelihood::restricted);
    CHECK(near(std::sqrt(fit.covariance[0]), 4.781051, 1e-5));
    CHECK(near(std::sqrt(fit.crossed_variance[0]), 3.729538, 1e-5));
    CHECK(near(std::sqrt(fit.residual_variance), 0.961577, 1e-5));
    CHECK(near(fit.criterion, 215.687568, 1e-6));
}

TEST_CASE("Orthodont: boys' readings err more than girls', by nlme's varIdent") {
    // The ratio of the two residual standard deviations is searched; girls' rows weigh its square.
    const auto fit_with = [](double ratio) {
        MixedRows rows{4, 1, jaw_distance_mm, {}, std::vector<double>(108, 1), {}, {}};
        for (int i = 0; i < 108; ++i) {
            const double age = ages()[static_cast<std::size_t>(i)], girl = i >= 64;
            rows.X.insert(rows.X.end(), {1, age, girl, age * girl});
            rows.group.push_back(i / 4);
            rows.weight.push_back(i >= 64 ? ratio * ratio : 1);
        }
        return fitted(rows, RandomShape::full, Likelihood::restricted);
    };
    const double ratio = std::exp(boost::math::tools::brent_find_minima(
                                      [&](double x) { return fit_with(std::exp(x)).criterion; }, 0.0, 2.0, 40)
                                      .first);
    const MixedFit fit = fit_with(ratio);
    CHECK(near(fit.log_likelihood(), -207.6102398, 1e-6));
    CHECK(near(std::sqrt(fit.residual_variance), 1.669823, 1e-5));
    CHECK(near(std::sqrt(fit.residual_variance) / ratio, 0.781301, 1e-5));
    CHECK(near(std::sqrt(fit.covariance[0]), 1.847571, 1e-5));
}

TEST_CASE("Oxboys: nearly straight growth, lines varying strongly") {
    const MixedFit fit =
        fitted(line_on(rows_of(height_cm, 9), boy_age, true), RandomShape::full, Likelihood::restricted);
    CHECK(near(fit.beta[0], 149.3717529, 1e-6));
    CHECK(near(fit.beta[1], 6.5254687, 1e-6));
    CHECK(near(fit.log_likelihood(), -362.04547528, 1e-6));
    CHECK(near_share(fit.residual_variance, 0.43545344, 1e-5));
}

TEST_CASE("rows that cannot be fitted are refused with a reason") {
    auto one_group = constant(rows_of({1, 2, 3, 4}, 4));
    CHECK(fit_mixed_model(one_group, RandomShape::full, Likelihood::full).refusal().code ==
          RefusalCode::too_few_data);
    auto twice = line_on(rows_of(reaction_ms, 10), std::vector<double>(180, 1), false);
    CHECK(
        fit_mixed_model(twice, RandomShape::full, Likelihood::full).refusal().sentence.find("say the same") !=
        std::string::npos);
    auto few = line_on(rows_of({1, 2, 3}, 2), {1, 2, 3}, false);
    CHECK_FALSE(fit_mixed_model(few, RandomShape::full, Likelihood::full));
}
