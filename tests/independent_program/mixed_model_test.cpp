// Mixed models against R's lme4 and nlme, run on the very same rows in the same run: mixed_model.R beside this file writes
// the rows it fitted, this test reads and fits them. Values that the programs gave once are held in
// tests/published_examples/mixed_model_test.cpp, so that without R, where this test says SKIPPED, something still stands.
// InstEval's deviance 237653.291792, the ratings of 73,421 lectures, was lme4 1.1-31's.
#include "inference/mixed_model.h"
#include "inference/random_stream.h"

#include <boost/math/tools/minima.hpp>
#include <doctest/doctest.h>

#include <array>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <map>
#include <sstream>
#include <string>

using namespace amentum;

namespace {

using Answers = std::map<std::string, double>; // "name program key"

// Athletes with slopes of their own, unequal numbers of days, sessions and radars that add something to everybody.
void write_roster(const std::filesystem::path& file) {
    RandomStream stream(41);
    std::array<double, 25> of_session{};
    std::array<double, 5> of_radar{};
    for (double& value : of_session)
        value = 0.6 * stream.next_normal();
    for (double& value : of_radar)
        value = 0.4 * stream.next_normal();
    std::ofstream out(file);
    out.precision(17);
    out << "id,session,radar,a,b,v\n";
    for (int id = 0; id < 80; ++id) {
        const double level = 80 + 3 * stream.next_normal();
        const double slope_a = 0.9 + 0.5 * stream.next_normal(), slope_b = -0.3 + 0.3 * stream.next_normal();
        const int days = 4 + static_cast<int>(9 * stream.next_uniform());
        for (int day = 0; day < days; ++day) {
            const auto session = static_cast<std::size_t>(25 * stream.next_uniform());
            const auto radar = static_cast<std::size_t>(5 * stream.next_uniform());
            const double a = stream.next_normal(), b = stream.next_normal();
            const double v = level + slope_a * a + slope_b * b + of_session[session] + of_radar[radar] +
                             0.8 * stream.next_normal();
            out << id << ',' << session << ',' << radar << ',' << a << ',' << b << ',' << v << '\n';
        }
    }
}

struct RunOfR {
    std::filesystem::path folder; // with the rows of each model
    Answers answers;              // empty: no R, or no lme4

    RunOfR() {
        std::string name = (std::filesystem::temp_directory_path() / "amentum_mixed_XXXXXX").string();
        if (!mkdtemp(name.data()))
            return;
        folder = name;
        write_roster(folder / "roster.csv");
        const std::string command = std::string("OPENBLAS_NUM_THREADS=1 Rscript --vanilla '") +
                                    AMENTUM_SOURCE_DIR + "/tests/independent_program/mixed_model.R' '" +
                                    name + "' 2>/dev/null";
        FILE* pipe = popen(command.c_str(), "r");
        std::array<char, 256> line{};
        while (pipe && std::fgets(line.data(), line.size(), pipe)) {
            std::istringstream words(line.data());
            std::string model, program, key;
            double value = 0;
            if (words >> model >> program >> key >> value)
                answers[model + " " + program + " " + key] = value;
        }
        if (pipe)
            pclose(pipe);
    }
    ~RunOfR() { std::filesystem::remove_all(folder); }
    RunOfR(const RunOfR&) = delete;
    RunOfR& operator=(const RunOfR&) = delete;
};

const RunOfR& run_of_r() {
    static const RunOfR run;
    return run;
}

bool skipped() {
    if (!run_of_r().answers.empty())
        return false;
    MESSAGE(
        "SKIPPED: Rscript with lme4 (r-cran-lme4) is not installed; mixed models were not compared with it "
        "in this run (./test installs it)");
    return true;
}

MixedRows rows_of(const std::string& model) {
    std::ifstream file(run_of_r().folder / (model + ".csv"));
    std::string line, name;
    REQUIRE(std::getline(file, line));
    std::vector<char> kind; // first letter of each column's name
    MixedRows rows{0, 0, {}, {}, {}, {}, {}};
    for (std::stringstream names(line); std::getline(names, name, ',');) {
        kind.push_back(name[0]);
        rows.fixed += name[0] == 'x';
        rows.random += name[0] == 'z';
        if (name[0] == 'c')
            rows.crossed.emplace_back();
    }
    while (std::getline(file, line)) {
        std::stringstream cells(line);
        std::size_t factor = 0;
        for (const char column : kind) {
            std::string cell;
            std::getline(cells, cell, ',');
            const double value = std::stod(cell);
            if (column == 'y')
                rows.y.push_back(value);
            else if (column == 'x')
                rows.X.push_back(value);
            else if (column == 'z')
                rows.Z.push_back(value);
            else if (column == 'g')
                rows.group.push_back(static_cast<int>(value));
            else
                rows.crossed[factor++].push_back(static_cast<int>(value));
        }
    }
    return rows;
}

MixedFit fitted(const MixedRows& rows, RandomShape shape, Likelihood likelihood) {
    const auto fit = fit_mixed_model(rows, shape, likelihood);
    if (!fit)
        FAIL(fit.refusal().sentence);
    return *fit;
}

void near(double value, double expected, double tolerance) {
    CAPTURE(value);
    CAPTURE(expected);
    CHECK(std::abs(value - expected) <= tolerance);
}

// One fit of ours against each program that fitted the model; tolerances as shares of the residual's spread, because
// optima are flat and the programs stop at different points of them.
void compare(const std::string& model, const MixedRows& rows, const MixedFit& fit,
             double criterion_tolerance = 1e-6) {
    const Answers& answers = run_of_r().answers;
    const double sigma = std::sqrt(fit.residual_variance);
    std::vector<double> spread;
    for (int k = 0; k < rows.random; ++k)
        spread.push_back(std::sqrt(fit.covariance[static_cast<std::size_t>(k * rows.random + k)]));
    for (const double variance : fit.crossed_variance)
        spread.push_back(std::sqrt(variance));
    int programs = 0;
    for (const std::string program : {"lme4", "nlme"}) {
        const std::string start = model + " " + program + " ";
        if (!answers.contains(start + "criterion"))
            continue;
        ++programs;
        CAPTURE(model);
        CAPTURE(program);
        // Lower is better: ours may not be above theirs, and not far below what they call the minimum.
        CHECK(fit.criterion <= answers.at(start + "criterion") + criterion_tolerance);
        CHECK(fit.criterion >= answers.at(start + "criterion") - 100 * criterion_tolerance);
        for (std::size_t j = 0; j < fit.beta.size(); ++j) {
            const double error = answers.at(start + "error" + std::to_string(j + 1));
            near(fit.beta[j], answers.at(start + "beta" + std::to_string(j + 1)), 1e-4 * error);
            near(fit.standard_error[j], error, 1e-3 * error);
        }
        near(sigma, answers.at(start + "residual"), 1e-4 * sigma);
        if (program == "lme4")
            for (std::size_t k = 0; k < spread.size(); ++k)
                near(spread[k], answers.at(start + "sd" + std::to_string(k + 1)), 1e-3 * (spread[k] + sigma));
    }
    CHECK(programs > 0);
}

void compare(const std::string& model, RandomShape shape = RandomShape::full,
             Likelihood likelihood = Likelihood::restricted) {
    const MixedRows rows = rows_of(model);
    compare(model, rows, fitted(rows, shape, likelihood));
}

} // namespace

TEST_CASE("lines of sleepers, children and boys, by lme4 and nlme in this run") {
    if (skipped())
        return;
    compare("sleepstudy");
    compare("sleepstudy_full", RandomShape::full, Likelihood::full);
    compare("sleepstudy_apart", RandomShape::diagonal, Likelihood::full);
    compare("sleepstudy_lost");
    compare("sleepstudy_lost_full", RandomShape::full, Likelihood::full);
    compare("orthodont");
    compare("oxboys");
}

TEST_CASE("levels of batches and rails, plates crossed with samples, machines nested in workers") {
    if (skipped())
        return;
    compare("dyestuff");
    compare("dyestuff2");
    compare("rail");
    compare("penicillin");
    compare("machines");
}

TEST_CASE("a simulated roster: slopes of each athlete's own, sessions and radars crossed with athletes") {
    if (skipped())
        return;
    compare("roster", RandomShape::diagonal);
    compare("roster_together");
    compare("roster_crossed");
}

TEST_CASE("boys' residuals and girls' apart, by nlme") {
    if (skipped())
        return;
    MixedRows rows = rows_of("by_sex");
    const auto fit_with = [&](double ratio) {
        rows.weight.clear();
        for (std::size_t i = 0; i < rows.y.size(); ++i)
            rows.weight.push_back(rows.X[4 * i + 2] > 0 ? 1 / (ratio * ratio)
                                                        : 1); // girls by the third column
        return fitted(rows, RandomShape::full, Likelihood::restricted);
    };
    const double ratio =
        std::exp(boost::math::tools::brent_find_minima(
                     [&](double x) { return fit_with(std::exp(x)).criterion; }, -2.0, 1.0, 40)
                     .first);
    const Answers& answers = run_of_r().answers;
    near(ratio, answers.at("by_sex nlme ratio"), 1e-5);
    near(fit_with(ratio).criterion, answers.at("by_sex nlme criterion"), 1e-6);
    near(std::sqrt(fit_with(ratio).residual_variance), answers.at("by_sex nlme residual"), 1e-5);
}

TEST_CASE("73,421 ratings of lectures: students, lecturers, departments") {
    if (skipped())
        return;
    const MixedRows rows = rows_of("ratings");
    CHECK(rows.y.size() == 73421);
    const MixedFit fit = fitted(rows, RandomShape::full, Likelihood::full);
    near(fit.criterion, 237653.291792, 1e-4);
    near(std::sqrt(fit.covariance[0]), 0.324664, 1e-4);
    near(std::sqrt(fit.crossed_variance[0]), 0.512409, 1e-4);
    near(std::sqrt(fit.crossed_variance[1]), 0.110143, 1e-4);
    near(std::sqrt(fit.residual_variance), 1.176840, 1e-4);
    compare("ratings", rows, fit, 1e-4);
}
