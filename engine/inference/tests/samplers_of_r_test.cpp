// Chains' checks and smoothed weights against R's posterior 1.4.0 and loo 2.5.1, by the authors of the methods, by the recipe
// samplers.R beside this file, which makes the same numbers itself. When both packages are installed the recipe is run again
// and every number it prints is compared.
#include "inference/inside/chain_checks.h"
#include "inference/inside/importance.h"
#include "inference/normal_quantile.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <map>
#include <numbers>
#include <sstream>
#include <string>

using namespace amentum;
using Eigen::Index;
using Eigen::VectorXd;

namespace {

// What samplers.R printed: 14 digits.
const std::map<std::string, double> printed{
    {"met_r_hat", 1.0190220627331},
    {"met_bulk", 290.30208125582},
    {"met_tail", 573.85096090222},
    {"met_mean", 290.7539714876},
    {"met_error", 0.070381936598831},
    {"apart_r_hat", 1.150490390949},
    {"apart_bulk", 21.284161898088},
    {"apart_tail", 365.86879327779},
    {"apart_mean", 20.874578173175},
    {"apart_error", 0.31402105130822},
    {"odd_r_hat", 1.0036577647501},
    {"odd_bulk", 430.59204370402},
    {"odd_tail", 643.70951159944},
    {"odd_mean", 431.38881247297},
    {"odd_error", 0.050544319767718},
    {"to_and_fro_r_hat", 1.0021847862873},
    {"to_and_fro_bulk", 2322.4719895936},
    {"to_and_fro_tail", 739.44257684287},
    {"to_and_fro_mean", 2322.4719895936},
    {"to_and_fro_error", 0.023591198482456},
    {"one_r_hat", 1.066408751399},
    {"one_bulk", 18.958210524285},
    {"one_tail", 51.6056777013},
    {"one_mean", 19.282065539694},
    {"one_error", 0.62315318919478},
    {"ties_r_hat", 1.0044305545223},
    {"ties_bulk", 549.53840199799},
    {"ties_tail", 613.76016731788},
    {"ties_mean", 549.14739729229},
    {"ties_error", 0.045615754077018},
    {"heavy_r_hat", 0.99945179060396},
    {"heavy_bulk", 1637.0279930002},
    {"heavy_tail", 1532.0336230218},
    {"heavy_mean", 1616.3206735038},
    {"heavy_error", 36.741905851075},
    {"light_k", 0.27039776405262},
    {"light_largest", 0.0069505349742576},
    {"light_squares", 0.0012118948900369},
    {"light_first", 0.00071179753474041},
    {"light_centre", 0.50290333604793},
    {"half_k", 0.59944942882643},
    {"half_largest", 0.00865294760969},
    {"half_squares", 0.00066446225846868},
    {"half_first", 0.00016536019564385},
    {"half_centre", 0.50004199450871},
    {"past_k", 1.0495996668036},
    {"past_largest", 0.1982729115025},
    {"past_squares", 0.04716080633625},
    {"past_first", 0.00012239979016312},
    {"past_centre", 0.54138515362744},
    {"normal_k", 0.081172268234115},
    {"normal_largest", 0.022585489838332},
    {"normal_squares", 0.0068918261553912},
    {"normal_first", 0.0045361255961315},
    {"normal_centre", 0.52013475369363},
    {"few_k", 0.56780427404533},
    {"few_largest", 0.1375846845304},
    {"few_squares", 0.047999317461279},
    {"few_first", 0.011112633020304},
    {"few_centre", 0.5773657968204},
    {"bounded_k", -0.83253796856368},
    {"bounded_largest", 0.00099492500342829},
    {"bounded_squares", 0.00066491389415741},
    {"bounded_first", 0.00021561633935548},
    {"bounded_centre", 0.50067523961437},
    {"exponential_shape", 0.051718653923884},
    {"exponential_scale", 0.89436308464988},
    {"pareto_shape", 0.70690439610343},
    {"pareto_scale", 1.9030694335145},
    {"uniform_shape", -0.86167347861564},
    {"uniform_scale", 0.86220905247262},
};
constexpr double relative = 1e-9; // digits of logarithms and sums in another order

VectorXd uniforms(Index n, long seed) {
    VectorXd u(n);
    long state = 1234567 * seed;
    for (double& each : u) {
        state = 16807 * state % 2147483647;
        each = static_cast<double>(state) / 2147483647;
    }
    return u;
}

VectorXd normals(Index n, long seed) {
    VectorXd z = uniforms(n, seed);
    for (double& each : z)
        each = normal_quantile(each);
    return z;
}

VectorXd walks(Index n, Index chains, double a, double shift, long seed) {
    VectorXd x = normals(n * chains, seed);
    for (Index i = 0; i < x.size(); ++i)
        x[i] += i % n == 0 ? 0 : a * x[i - 1];
    x.tail(n).array() += shift;
    return x;
}

using Answers = std::map<std::string, double>;

void add_checks(Answers& out, const std::string& name, const VectorXd& draws, int chains) {
    const ChainCheck check = check_chains(draws, chains);
    out[name + "_r_hat"] = check.r_hat;
    out[name + "_bulk"] = check.bulk_size;
    out[name + "_tail"] = check.tail_size;
    out[name + "_mean"] = check.mean_size;
    out[name + "_error"] = check.error;
}

void add_weights(Answers& out, const std::string& name, const VectorXd& log_ratios) {
    const ImportanceWeights fitted = smooth_importance(log_ratios);
    const Index n = log_ratios.size();
    out[name + "_k"] = fitted.tail_shape;
    out[name + "_largest"] = fitted.weights.maxCoeff();
    out[name + "_squares"] = 1 / fitted.size;
    out[name + "_first"] = fitted.weights[0];
    out[name + "_centre"] = weighted_mean(VectorXd::LinSpaced(n, 1, static_cast<double>(n)), fitted.weights) /
                            static_cast<double>(n);
}

void add_tail(Answers& out, const std::string& name, VectorXd x) {
    std::sort(x.begin(), x.end());
    const ParetoTail tail = fit_pareto_tail(x);
    out[name + "_shape"] = tail.shape;
    out[name + "_scale"] = tail.scale;
}

Answers engine_answers() {
    Answers out;
    add_checks(out, "met", walks(250, 4, 0.6, 0, 11), 4);
    add_checks(out, "apart", walks(250, 4, 0.6, 1.5, 12), 4);
    add_checks(out, "odd", walks(251, 3, 0.3, 0, 13), 3);
    add_checks(out, "to_and_fro", walks(400, 2, -0.5, 0, 14), 2);
    add_checks(out, "one", walks(300, 1, 0.9, 0, 15), 1);
    add_checks(out, "ties", walks(200, 4, 0.2, 0, 16).array().round(), 4);
    add_checks(out, "heavy", (std::numbers::pi * (uniforms(1600, 17).array() - 0.5)).tan(), 4);
    add_weights(out, "light", -0.3 * uniforms(1000, 21).array().log());
    add_weights(out, "half", -0.5 * uniforms(4000, 22).array().log());
    add_weights(out, "past", -0.9 * uniforms(4000, 23).array().log());
    add_weights(out, "normal", 1.2 * normals(500, 24));
    add_weights(out, "few", normals(60, 25));
    add_weights(out, "bounded", uniforms(2000, 26).array().log());
    add_tail(out, "exponential", -uniforms(300, 31).array().log());
    add_tail(out, "pareto", 2 * (uniforms(500, 32).array().pow(-0.7) - 1) / 0.7);
    add_tail(out, "uniform", uniforms(200, 33));
    return out;
}

Answers answers_of_r() {
    Answers out;
    const std::string command = std::string("Rscript --vanilla '") + AMENTUM_SOURCE_DIR +
                                "/engine/inference/tests/samplers.R' 2>/dev/null";
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

void compare(const Answers& ours, const Answers& r) {
    REQUIRE(ours.size() == r.size());
    for (const auto& [name, value] : r) {
        CAPTURE(name);
        CAPTURE(value);
        CAPTURE(ours.at(name));
        CHECK(std::abs(ours.at(name) - value) <= relative * std::abs(value));
    }
}

} // namespace

TEST_CASE("R-hat, effective numbers of draws and smoothed weights are R's") {
    compare(engine_answers(), printed);
}

TEST_CASE("posterior and loo are asked again when they are installed") {
    const Answers r = answers_of_r();
    if (r.empty()) {
        MESSAGE(
            "SKIPPED: Rscript with posterior and loo is not installed (Debian: r-cran-posterior r-cran-loo); "
            "the listed values above were checked, R itself was not asked.");
        return;
    }
    compare(engine_answers(), r);
}
