// Longley's economy of the United States, 1947 to 1962: seven fixed effects whose columns nearly repeat each other, the test
// on which programs of least squares fail [NistStrd]. NIST prints the certified values to 15 digits; here they are from
// memory and equal R's lm to the digits shown. A mixed model whose random effect has no column in the rows is least squares.
#include "inference/mixed_model.h"

#include <doctest/doctest.h>

#include <cmath>

using namespace amentum;

namespace {

// deflator, product, unemployed, armed forces, population, year; employed
const double rows_of_years[16][7] = {
    {83.0, 234289, 2356, 1590, 107608, 1947, 60323},  {88.5, 259426, 2325, 1456, 108632, 1948, 61122},
    {88.2, 258054, 3682, 1616, 109773, 1949, 60171},  {89.5, 284599, 3351, 1650, 110929, 1950, 61187},
    {96.2, 328975, 2099, 3099, 112075, 1951, 63221},  {98.1, 346999, 1932, 3594, 113270, 1952, 63639},
    {99.0, 365385, 1870, 3547, 115094, 1953, 64989},  {100.0, 363112, 3578, 3350, 116219, 1954, 63761},
    {101.2, 397469, 2904, 3048, 117388, 1955, 66019}, {104.6, 419180, 2822, 2857, 118734, 1956, 67857},
    {108.4, 442769, 2936, 2798, 120445, 1957, 68169}, {110.8, 444546, 4681, 2637, 121950, 1958, 66513},
    {112.6, 482704, 3813, 2552, 123366, 1959, 68655}, {114.2, 502601, 3931, 2514, 125368, 1960, 69564},
    {115.7, 518173, 4806, 2572, 127852, 1961, 69331}, {116.9, 554894, 4007, 2827, 130081, 1962, 70551}};

} // namespace

TEST_CASE("Longley: seven effects to seven and eight digits") {
    MixedRows rows{7, 1, {}, {}, std::vector<double>(16, 0), {}, {}};
    for (int i = 0; i < 16; ++i) {
        rows.y.push_back(rows_of_years[i][6]);
        rows.X.push_back(1);
        rows.X.insert(rows.X.end(), rows_of_years[i], rows_of_years[i] + 6);
        rows.group.push_back(i % 2);
    }
    const auto fit = fit_mixed_model(rows, RandomShape::full, Likelihood::restricted);
    REQUIRE(fit);
    const double certified[] = {-3482258.63459582, 15.0618722713733,  -0.0358191792925910,
                                -2.02022980381683, -1.03322686717359, -0.0511041056535807,
                                1829.15146461355};
    for (std::size_t j = 0; j < 7; ++j) {
        CAPTURE(j);
        CAPTURE(fit->beta[j]);
        CAPTURE(fit->beta[j] / certified[j] - 1);
        // Sums of products keep half the digits of such columns: 8 of the level and the year, 7 of the others.
        CHECK(std::abs(fit->beta[j] / certified[j] - 1) < (j == 0 || j == 6 ? 1e-8 : 1e-7));
    }
    CHECK(std::sqrt(fit->residual_variance) == doctest::Approx(304.854073561965).epsilon(1e-8));
    CHECK(fit->standard_error[6] == doctest::Approx(455.478499142212).epsilon(1e-8));
}
