// Workload averages against their closed forms. Weights 2/(N+1): Williams et al., Br J Sports Med 51:209,
// 2017. The coupling of independent weeks, r = 0.5: Lolli et al., Br J Sports Med 53:921, 2019. The rest is
// algebra, shown beside.
#include "throwing_workload/methods.h"
#include "throwing_workload/workload_averages.h"

#include <doctest/doctest.h>

#include <cmath>
#include <random>

using namespace amentum;

namespace {

std::vector<double> days(std::initializer_list<std::pair<int, double>> runs) {
    std::vector<double> daily;
    for (const auto& [count, throws] : runs)
        daily.insert(daily.end(), count, throws);
    return daily;
}

const std::vector<double> step = days({{28, 50}, {7, 100}});

} // namespace

TEST_CASE("weights and half-lives of N = 7 and 28") {
    CHECK(ewma_weight(7) == doctest::Approx(0.25).epsilon(1e-12));
    CHECK(ewma_weight(28) == doctest::Approx(2.0 / 29).epsilon(1e-12));
    CHECK(ewma_weight(28) == doctest::Approx(0.0689655).epsilon(1e-6));
    CHECK(std::abs(ewma_half_life(7) - 2.409) < 0.001);
    CHECK(std::abs(ewma_half_life(28) - 9.700) < 0.001);
}

TEST_CASE("28 days of 50, then 7 of 100: 100 - 50 (1 - w)^7") {
    const double acute = ewma(step, 7).back(), chronic = ewma(step, 28).back();
    CHECK(acute == doctest::Approx(100 - 50 * std::pow(0.75, 7)).epsilon(1e-12));
    CHECK(std::abs(acute - 93.3258) < 1e-3);
    CHECK(std::abs(chronic - 69.6799) < 1e-3);
    CHECK(std::abs(acute / chronic - 1.33935) < 1e-3);
}

TEST_CASE("the same series: coupled 1.6, uncoupled 2.0, and the identity between them") {
    CHECK(*coupled_ratio(step) == doctest::Approx(1.6).epsilon(1e-12));
    CHECK(*uncoupled_ratio(step) == doctest::Approx(2.0).epsilon(1e-12));
    CHECK(coupled_from_uncoupled(2.0) == doctest::Approx(4 * 2.0 / 5).epsilon(1e-12));
    CHECK(coupled_from_uncoupled(1.8) == doctest::Approx(1.5).epsilon(1e-12));
    CHECK(coupled_from_uncoupled(0.75) == doctest::Approx(0.8).epsilon(1e-12));
    CHECK(coupled_from_uncoupled(3.0) == doctest::Approx(2.0).epsilon(1e-12));
}

TEST_CASE("a constant load has all ratios 1") {
    const auto constant = days({{60, 37}});
    CHECK(*coupled_ratio(constant) == doctest::Approx(1).epsilon(1e-12));
    CHECK(*uncoupled_ratio(constant) == doctest::Approx(1).epsilon(1e-12));
    CHECK(ewma(constant, 7).back() / ewma(constant, 28).back() == doctest::Approx(1).epsilon(1e-12));
}

TEST_CASE("after 28 days of nothing: coupled at its bound of 4, uncoupled blank") {
    const auto return_to_throwing = days({{28, 0}, {1, 100}});
    CHECK(*coupled_ratio(return_to_throwing) == doctest::Approx(4).epsilon(1e-12));
    CHECK(uncoupled_ratio(return_to_throwing).refusal().code == RefusalCode::method_does_not_apply);
    CHECK(coupled_ratio(days({{28, 0}})).refusal().code == RefusalCode::method_does_not_apply);
    CHECK(coupled_ratio(days({{27, 10}})).refusal().code == RefusalCode::too_few_data);
}

TEST_CASE("independent weeks correlate 0.5 with the 28 days that hold them, by coupling alone") {
    std::mt19937_64 random(20260319);
    std::normal_distribution<double> week(300, 40);
    const int trials = 20000;
    double sa = 0, sc = 0, saa = 0, scc = 0, sac = 0;
    for (int i = 0; i < trials; ++i) {
        const auto month = days({{7, week(random)}, {7, week(random)}, {7, week(random)}, {7, week(random)}});
        const double a = mean_of_last(month, 7), c = mean_of_last(month, 28);
        sa += a, sc += c, saa += a * a, scc += c * c, sac += a * c;
    }
    const double r =
        (trials * sac - sa * sc) / std::sqrt((trials * saa - sa * sa) * (trials * scc - sc * sc));
    CHECK(std::abs(r - 0.5) < 0.03);
}

TEST_CASE("the methods give the same numbers by name") {
    std::string throws;
    for (const double d : step)
        throws += (throws.empty() ? "" : ",") + std::to_string(static_cast<int>(d));
    const auto call = [](const std::string& name, const std::map<std::string, std::string>& given) {
        for (const auto& method : throwing_workload::methods())
            if (method.name == name)
                return method.run(*check_arguments(method.inputs, given));
        return Result<MethodAnswer>(MethodAnswer{});
    };
    CHECK(std::abs(call("ewma", {{"throws", throws}, {"days", "7"}})->outputs.at(0).value - 93.3258) < 1e-3);
    CHECK(call("coupled_ratio", {{"throws", throws}})->outputs.at(0).value == doctest::Approx(1.6));
    CHECK(call("uncoupled_ratio", {{"throws", throws}})->outputs.at(0).value == doctest::Approx(2.0));
    CHECK(call("coupled_from_uncoupled", {{"uncoupled_ratio", "1.8"}})->outputs.at(0).value ==
          doctest::Approx(1.5));
    const auto rest = call("rest_days", {{"rest_to", "20,35,50,65,95"}, {"pitches", "66"}});
    CHECK(rest->outputs.at(0).value == 4);
    CHECK_FALSE(call("rest_days", {{"rest_to", "20,20"}, {"pitches", "66"}}));
}
