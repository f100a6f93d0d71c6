// What must hold for every equation, load and number of repetitions.
#include "measurement/measure_test.h"
#include "measurement/one_rep_max.h"
#include "readings_of_a_day.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <random>

namespace amentum {
namespace {

double kilograms(OneRepMaxEquation equation, double kg, double reps, double reserve) {
    const auto maximum = estimate_one_rep_max(equation, {Mass::kilograms(kg), reps, reserve});
    REQUIRE(maximum);
    return maximum->value.kilograms();
}

} // namespace

TEST_CASE("More repetitions, more reserve or more load: a higher maximum") {
    std::mt19937_64 stream(11);
    std::uniform_real_distribution<double> load(1, 400), step(0.01, 1);
    for (const auto& [equation, name] : words_of<OneRepMaxEquation>) {
        CAPTURE(name);
        const double most = equation == OneRepMaxEquation::chart ? 12 : 15;
        for (int i = 0; i < 200; ++i) {
            const double kg = load(stream);
            const double n = std::uniform_real_distribution<double>(1, most - 1)(stream);
            const double more = step(stream);
            CAPTURE(n);
            CAPTURE(more);
            CHECK(kilograms(equation, kg, n + more, 0) > kilograms(equation, kg, n, 0));
            CHECK(kilograms(equation, kg, n, more) == doctest::Approx(kilograms(equation, kg, n + more, 0)));
            CHECK(kilograms(equation, kg + more, n, 0) > kilograms(equation, kg, n, 0));
        }
    }
}

TEST_CASE("Load to maximum and back is the load") {
    std::mt19937_64 stream(12);
    std::uniform_real_distribution<double> load(1, 400), reps(1, 8), reserve(0, 4);
    for (const auto& [equation, name] : words_of<OneRepMaxEquation>)
        for (int i = 0; i < 200; ++i) {
            CAPTURE(name);
            const double kg = load(stream), n = reps(stream), left = reserve(stream);
            const auto back = estimate_load_for_repetitions(
                equation, Mass::kilograms(kilograms(equation, kg, n, left)), n, left);
            REQUIRE(back);
            CHECK(back->load.kilograms() == doctest::Approx(kg).epsilon(1e-12));
        }
}

TEST_CASE("The maximum does not depend on the unit the load was given in") {
    std::mt19937_64 stream(13);
    std::uniform_real_distribution<double> pounds(20, 300);
    std::uniform_int_distribution<int> reps(1, 10);
    for (int i = 0; i < 200; ++i) {
        const double lb = pounds(stream);
        const int n = reps(stream);
        Reading in_pounds = tests::set_of(1, n);
        in_pounds.load = Mass::pounds(lb);
        const auto a = measure_test(tests::squat_kind(), {in_pounds});
        const auto b = measure_test(tests::squat_kind(), {tests::set_of(lb * 0.45359237, n)});
        REQUIRE(a);
        REQUIRE(b);
        CHECK(a->value == doctest::Approx(b->value).epsilon(1e-14));
        CHECK(a->standard_error == doctest::Approx(b->standard_error).epsilon(1e-14));
    }
}

TEST_CASE("Our equation stays within 2 % of the median of the seven, up to 10 repetitions") {
    using enum OneRepMaxEquation;
    for (double n = 2; n <= 10; n += 0.25) {
        CAPTURE(n);
        std::vector<double> seven;
        for (const auto equation : {epley, brzycki, lander, lombardi, mayhew, oconner, wathan})
            seven.push_back(kilograms(equation, 100, n, 0));
        std::sort(seven.begin(), seven.end());
        CHECK(std::abs(kilograms(our_equation, 100, n, 0) / seven[3] - 1) < 0.02);
    }
}

TEST_CASE("The spread is nothing for a single, 2 to 4 % up to 10, and grows beyond") {
    CHECK(spread_between_equations(1) == 0);
    CHECK(spread_between_equations(5) > 0.02);
    CHECK(spread_between_equations(10) < 0.04);
    CHECK(spread_between_equations(15) > 0.07);
    CHECK(spread_between_equations(15) > spread_between_equations(12));
}

TEST_CASE("The warning and the refusals stand where they are said to stand") {
    const auto set = [](double reps, double reserve) {
        return estimate_one_rep_max(our_equation, {Mass::kilograms(100), reps, reserve});
    };
    CHECK(set(10, 0)->warnings.empty());
    CHECK(set(8, 3)->warnings.size() == 1);
    CHECK(set(15, 0));
    CHECK_FALSE(set(15, 0.5));
    CHECK_FALSE(set(11, 5));
    CHECK_FALSE(set(5, 5.5));
    CHECK_FALSE(set(0, 3));
    CHECK_FALSE(set(-3, 0));
    CHECK_FALSE(estimate_one_rep_max(OneRepMaxEquation::chart, {Mass::kilograms(100), 13, 0}));
    CHECK_FALSE(estimate_load_for_repetitions(our_equation, Mass::kilograms(100), 16, 0));
    CHECK_FALSE(estimate_load_for_repetitions(our_equation, Mass::kilograms(0), 5, 0));
}

} // namespace amentum
