// A test's own error from published tables of repeats. Expected values: as printed where said so; the other digits by
// R 4.2.2 on the same tables (recipe: tests/independent_program/repeats.R).
#include "measurement/test_error_agreement.h"
#include "repeats_data.h"

#include <doctest/doctest.h>

#include <cmath>

namespace amentum {
namespace {

void check_near(double got, double expected, double tolerance) {
    CAPTURE(got);
    CAPTURE(expected);
    CHECK(std::abs(got - expected) <= tolerance);
}

RepeatTable pair_of(std::size_t first, std::size_t second) {
    RepeatTable table;
    for (const auto& row : two_meters)
        table.push_back({row[first], row[second]});
    return table;
}

} // namespace

TEST_CASE(
    "Bland & Altman, Lancet 1:307, 1986: printed -2.1, 38.8 and the limits by two standard deviations") {
    // The paper subtracts the small meter from the large one: the small meter is `first` here.
    const auto limits = limits_of_agreement(column_of(two_meters, 2), column_of(two_meters, 0), 2);
    REQUIRE(limits);
    check_near(limits->bias.value, -2.1176, 1e-3);
    check_near(limits->spread, 38.7651, 1e-3);
    check_near(limits->low.value, -79.65, 0.005);
    check_near(limits->high.value, 75.41, 0.005);
    check_near(limits->bias.standard_error, 38.7651 / std::sqrt(17.0), 1e-3); // SD / sqrt(n), as in the paper
    check_near(limits->low.standard_error, 38.7651 * std::sqrt(3.0 / 17), 1e-3);
}

TEST_CASE("The same paper: typical errors of the two meters and the 90 % interval of the first") {
    const auto large = estimate_error_of_trials(pair_of(0, 1)),
               small = estimate_error_of_trials(pair_of(2, 3));
    REQUIRE(large);
    REQUIRE(small);
    check_near(large->error.error, 15.3612, 1e-3);
    check_near(small->error.error, 20.4158, 1e-3);
    CHECK(large->error.freedom == 16);
    // 80 % limits: 15.361215 sqrt(16 / qchisq(c(.9, .1), 16)) by R.
    check_near(large->error.band.low, 12.6638413, 1e-5);
    check_near(large->error.band.high, 20.1353213, 1e-5);
}

TEST_CASE("The same paper: repeatability 2 sqrt(sum d^2 / n), learning left in, 43.294 and 56.316") {
    // R on the same table; sum d^2 / n = 2 s_w^2, so that repeatability is 2 sqrt(2) s_w.
    const auto large = estimate_error_of_trials(pair_of(0, 1), Learning::left_in),
               small = estimate_error_of_trials(pair_of(2, 3), Learning::left_in);
    REQUIRE(large);
    REQUIRE(small);
    check_near(2 * std::sqrt(2.0) * large->error.error, 43.294, 1e-3);
    check_near(2 * std::sqrt(2.0) * small->error.error, 56.316, 1e-3);
}

TEST_CASE("Bland & Altman, BMJ 313:744, 1996: within-subject variance 460.52, learning taken out 19.50") {
    const auto within = estimate_error_of_trials(twenty_children, Learning::left_in);
    REQUIRE(within);
    check_near(within->error.error * within->error.error, 460.52083, 1e-4);
    check_near(within->error.error, 21.4597, 1e-4);
    CHECK(within->error.freedom == 60);
    const auto removed = estimate_error_of_trials(twenty_children);
    REQUIRE(removed);
    check_near(removed->error.error, 19.4994, 1e-4);
    CHECK(removed->error.freedom == 57);
    // Trial means 299.75, 305.25, 315.25, 322.00; standard error of a difference of two means, 19.4994 sqrt(2 / 20).
    REQUIRE(removed->learning.size() == 3);
    check_near(removed->learning[0].value, 5.5, 1e-9);
    check_near(removed->learning[1].value, 15.5, 1e-9);
    check_near(removed->learning[2].value, 22.25, 1e-9);
    check_near(removed->learning[2].standard_error, 6.16623, 1e-4);
}

TEST_CASE("The same table: ICC(1,1) and its 80 % interval") {
    const auto all = intraclass_correlations(twenty_children);
    REQUIRE(all);
    check_near(all->single[0].value, 0.887666, 1e-6);
    check_near(all->single[0].band.low, 0.83327397, 1e-7);
    check_near(all->single[0].band.high, 0.93149918, 1e-7);
}

TEST_CASE("Shrout & Fleiss, Psychol Bull 86:420, 1979: six correlations, printed .17 .29 .71 .44 .62 .91") {
    const auto all = intraclass_correlations(six_subjects);
    REQUIRE(all);
    // psych::ICC(alpha = .20, lmer = FALSE), psych 2.2.9
    const double single[] = {0.165742, 0.289764, 0.714841}, of_mean[] = {0.442797, 0.620051, 0.909316};
    const double low[] = {-0.047857465, 0.078845948, 0.490534060},
                 high[] = {0.54410243, 0.60225711, 0.89665778};
    const double mean_low[] = {-0.223521359, 0.255053894, 0.793872192},
                 mean_high[] = {0.82680686, 0.85829167, 0.97199378};
    for (int form = 0; form < 3; ++form) {
        CAPTURE(form);
        check_near(all->single[form].value, single[form], 1e-6);
        check_near(all->of_mean[form].value, of_mean[form], 1e-6);
        check_near(all->single[form].band.low, low[form], 1e-7);
        check_near(all->single[form].band.high, high[form], 1e-7);
        check_near(all->of_mean[form].band.low, mean_low[form], 1e-7);
        check_near(all->of_mean[form].band.high, mean_high[form], 1e-7);
    }
}

TEST_CASE("Hopkins, Sports Med 30:1, 2000: how sure a typical error is, by athletes x trials") {
    // Factors of the 80 % interval for 10 x 2, 20 x 2, 50 x 2 and 50 x 3, by R: sqrt(df / qchisq(c(.9, .1), df)).
    // (The paper's own are of 90 %: 0.73 to 1.65, 0.79 to 1.37, 0.86 to 1.20, 0.90 to 1.13.)
    const struct {
        double freedom, low, high;
    } rows[] = {{9, 0.782896129, 1.469430722},
                {19, 0.835725861, 1.277017580},
                {49, 0.888731896, 1.153630320},
                {98, 0.917898412, 1.103074836}};
    for (const auto& row : rows) {
        const auto error = error_with_band(1, row.freedom);
        check_near(error.band.low, row.low, 1e-8);
        check_near(error.band.high, row.high, 1e-8);
    }
}

TEST_CASE("How many repeats settle an error within a factor of 1.25: 23 by the chi-squared table") {
    // R: sqrt(22 / qchisq(.1, 22)) = 1.2517, sqrt(23 / qchisq(.1, 23)) = 1.2446
    CHECK(repeats_to_settle(0) == 23);
    CHECK(repeats_to_settle(11) == 12);
    CHECK(repeats_to_settle(23) == 0);
    CHECK(repeats_to_settle(200) == 0);
}

TEST_CASE("Rows of different length: least squares of rows and trials, by R's lm") {
    // summary(lm(y ~ row + trial)): sigma 0.76594169 on 5 df; trial 2 1.4 (0.48442406), trial 3 3.2 (0.70616334)
    const RepeatTable uneven{{10, 12, 13}, {20, 21}, {15, 15, 18}, {7}, {30, 33}, {11, 12}};
    const auto removed = estimate_error_of_trials(uneven);
    REQUIRE(removed);
    check_near(removed->error.error, 0.76594169, 1e-7);
    CHECK(removed->error.freedom == 5);
    CHECK(removed->rows == 5);
    check_near(removed->learning[0].value, 1.4, 1e-9);
    check_near(removed->learning[0].standard_error, 0.48442406, 1e-7);
    check_near(removed->learning[1].value, 3.2, 1e-9);
    check_near(removed->learning[1].standard_error, 0.70616334, 1e-7);
    const auto left_in = estimate_error_of_trials(uneven, Learning::left_in);
    REQUIRE(left_in);
    check_near(left_in->error.error, 1.51971175, 1e-7);
}

} // namespace amentum
