// Which test would shrink the doubt about the choice of limiter most? What one result is worth before it is known.
//
// Gains g_j of the choices are normal and linear in the levels; a test on its day reads the level x with error e:
//     E[g_j | result] = m_j + b_j Z,   b_j = Cov(g_j on the day of choice, x on the day of the test) / sd(result),
//     Var(result) = Var(x) + Var(e),   Z ~ N(0, 1)
//     value = E max_j (m_j + b_j Z) - max_j m_j          the gain lost by choosing without it [Raiffa1961]
// exactly: the largest of lines in Z changes at their crossings c_i, so that E max = sum of
// m_i (Phi(c_i+1) - Phi(c_i)) + b_i (phi(c_i) - phi(c_i+1)) over the lines that are largest somewhere [Frazier2009].
// Drift: a level that walks at random by q a day has Var(x) on the day of the test grown by q t, and
// Cov(x then, x on the day of choice) = Var(x then): the later the test, the more it says of the day of choice.
// Units: the gains'. Range: two gains or more; variance of the result above 0 (asserted).
// What it cannot tell: that a test wearies; what a second test would add (values of two tests do not add up).
//
// Example: gains N(1.2, 0.5^2) and N(0.8, 0.9^2), r = 0.3; a test that shows the first exactly is worth 0.0038, one that shows
// the second exactly 0.1408; both together 0.1899 (value_of_information.h).
#pragma once

#include <optional>
#include <span>
#include <vector>

namespace amentum {

struct TestOutlook {
    double
        result_variance; // of one result on the day of the test: the level's doubt then and the test's error
    std::vector<double> with_gains; // covariance of the level that day with each gain on the day of choice
};

// E max_j (at_j + slope_j Z), Z ~ N(0, 1).
double expected_largest(std::span<const double> at, std::span<const double> slope);

double value_of_test(std::span<const double> expected_gains, const TestOutlook& test);

// A level known on `today` with `variance_today` that walks by `drift` a day: the outlook of a test `days_ahead` days from
// then, with gain `which` of `gains` moving by `gain_a_unit` for each unit of the level.
struct LevelAhead {
    double variance_today;
    double drift;          // variance a day
    int days_ahead;        // 0 or more
    double error_variance; // of one test
};
// A level held against what is usual (reference_level.h): z ~ N(0, 1) between athletes, seen with the doubt u of what is usual,
// which no test of this athlete takes away, and the variance P of the athlete's own state: Var(z) = (u + P) / (1 + u + P).
// P in SDs^2 between athletes; a test in t days turns P + q t into (P + q t) e / (P + q t + e), and drift goes on from there.
struct UsualLevelAhead {
    std::optional<double> variance_today; // P; none: never tested, Var(z) = 1
    double drift;                         // q, a day
    double usual_doubt;                   // u
    double error_variance;                // e, of one test, above 0
    int test_in, choice_in;               // days from today, 0 <= test_in <= choice_in
};
struct DoubtAtChoice { // variance of z on the day of choice
    double without, with_test;
};
DoubtAtChoice doubt_at_choice(const UsualLevelAhead& level);
TestOutlook test_outlook(const UsualLevelAhead& level, std::size_t which, std::size_t gains,
                         double gain_a_sd);

TestOutlook test_outlook(const LevelAhead& level, std::size_t which, std::size_t gains, double gain_a_unit);

} // namespace amentum
