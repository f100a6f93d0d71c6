// What a test is worth, against closed forms and a plain sum.
//
// Two levers, N(1.2, 0.5^2) and N(0.8, 0.9^2), r = 0.3 [Clark1961]: a result moves the difference of the two means by
// s = |b1 - b2| in SD, and is worth s phi(d) - 0.4 (1 - Phi(d)), d = 0.4 / s:
//   the first shown exactly   b = (0.5, 0.27)   s = 0.23       0.0038213
//   the second shown exactly  b = (0.15, 0.9)   s = 0.75       0.1407798
//   both                      s = sqrt(0.79)                   0.1899013, the value of knowing (EVPI)
// (worked with the error function of another program, Python 3.11's math.erfc.)
#include "inference/next_test.h"
#include "inference/value_of_information.h"

#include <doctest/doctest.h>

#include <cmath>
#include <numbers>

using namespace amentum;

namespace {

const std::vector<double> gains{1.2, 0.8};

double value_with_slopes(const std::vector<double>& expected, const std::vector<double>& slope) {
    return value_of_test(expected, {1.0, slope});
}

// E max over a fine grid of Z, without the lines' crossings.
double largest_by_sum(const std::vector<double>& at, const std::vector<double>& slope) {
    double sum = 0;
    constexpr double step = 1e-4;
    for (double z = -9; z <= 9; z += step) {
        double best = -1e300;
        for (std::size_t j = 0; j < at.size(); ++j)
            best = std::max(best, at[j] + slope[j] * z);
        sum += best * std::exp(-z * z / 2) / std::sqrt(2 * std::numbers::pi) * step;
    }
    return sum;
}

} // namespace

TEST_CASE("a perfect test of one of two levers has a closed form, and both together are worth the value of "
          "knowing") {
    CHECK(value_with_slopes(gains, {0.5, 0.27}) == doctest::Approx(0.0038213003).epsilon(1e-7));
    CHECK(value_with_slopes(gains, {0.15, 0.9}) == doctest::Approx(0.1407798484).epsilon(1e-7));
    CHECK(value_with_slopes(gains, {std::sqrt(0.79), 0}) == doctest::Approx(0.1899012856).epsilon(1e-7));
    CHECK(compare_two_levers({1.2, 0.5}, {0.8, 0.9}, 0.3).value_of_knowing ==
          doctest::Approx(0.1899012856).epsilon(1e-7));
}

TEST_CASE("the largest of several lines is what a plain sum gives") {
    const std::vector<double> at{0.3, 0.5, 0.1, 0.45, -2}, slope{0.2, -0.1, 0.6, 0.2, 0.1};
    CHECK(expected_largest(at, slope) == doctest::Approx(largest_by_sum(at, slope)).epsilon(1e-7));
    const std::vector<double> tied{1, 1, 0.2}, flat{0, 0, 0.9};
    CHECK(expected_largest(tied, flat) == doctest::Approx(largest_by_sum(tied, flat)).epsilon(1e-7));
    CHECK(expected_largest(std::vector{2.0}, std::vector{5.0}) == doctest::Approx(2.0));
}

TEST_CASE("a test that tells nothing is worth nothing, and error makes a test worth less") {
    CHECK(value_of_test(gains, {1.0, {0, 0}}) == 0);
    CHECK(value_of_test(gains, {1.0, {0.4, 0.4}}) == doctest::Approx(0).epsilon(1e-12)); // moves both alike
    double last = 1;
    for (const double error : {0.0, 0.25, 1.0, 4.0}) {
        const double value = value_of_test(gains, test_outlook(LevelAhead{1.0, 0, 0, error}, 1, 2, -0.9));
        CHECK(value < last);
        last = value;
    }
    CHECK(last > 0);
}

TEST_CASE("a level held against what is usual: what a test leaves open, by hand") {
    // P 0.3, q 0.01, u 0.1, e 0.2; test in 20 days, choice in 30: P then 0.5, tested 0.5 x 0.2 / 0.7 = 0.142857; at the choice 0.6
    // and 0.242857; Var(z) 0.7 / 1.7 = 0.411765 and 0.342857 / 1.342857 = 0.255319.
    const auto doubt = doubt_at_choice({0.3, 0.01, 0.1, 0.2, 20, 30});
    CHECK(doubt.without == doctest::Approx(0.411765).epsilon(1e-5));
    CHECK(doubt.with_test == doctest::Approx(0.255319).epsilon(1e-5));
    const auto outlook = test_outlook(UsualLevelAhead{0.3, 0.01, 0.1, 0.2, 20, 30}, 1, 3, -2.0);
    CHECK(outlook.with_gains[1] == doctest::Approx(-2 * std::sqrt(0.411765 - 0.255319)).epsilon(1e-5));
    CHECK(outlook.with_gains[0] == 0);
    // Never tested: 1 before, (0.1 + 0.2 + 0.1) / 1.4 after.
    const auto first = doubt_at_choice({std::nullopt, 0.01, 0.1, 0.2, 20, 30});
    CHECK(first.without == 1);
    CHECK(first.with_test == doctest::Approx(0.4 / 1.4));
}

TEST_CASE("drift: the later test says more of the day of choice, by the variance that has grown until then") {
    // Level variance 0.2 now, 0.01 a day, error 0.3, gain 0.9 a unit of the second lever: after 0 days b = 0.9 x 0.2 / sqrt(0.5),
    // after 28 days 0.9 x 0.48 / sqrt(0.78). The value is that of the difference of two normal means, by hand as above.
    const auto by_hand = [](double s) {
        const double d = 0.4 / s;
        return s * std::exp(-d * d / 2) / std::sqrt(2 * std::numbers::pi) -
               0.4 * 0.5 * std::erfc(d / std::numbers::sqrt2);
    };
    const auto today = test_outlook(LevelAhead{0.2, 0.01, 0, 0.3}, 1, 2, 0.9),
               later = test_outlook(LevelAhead{0.2, 0.01, 28, 0.3}, 1, 2, 0.9);
    CHECK(value_of_test(gains, today) == doctest::Approx(by_hand(0.18 / std::sqrt(0.5))).epsilon(1e-9));
    CHECK(value_of_test(gains, later) == doctest::Approx(by_hand(0.432 / std::sqrt(0.78))).epsilon(1e-9));
    CHECK(value_of_test(gains, later) > value_of_test(gains, today));
}
