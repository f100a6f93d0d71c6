// Averages of daily throwing, and the two ratios people make of them, each exactly as published.
//
//   exponentially weighted:  E_1 = L_1,  E_t = w L_t + (1 - w) E_(t-1),  w = 2 / (N + 1)   [Williams2017]
//                            half-life = ln 0.5 / ln(1 - w) days
//   coupled ratio            C = mean of the last 7 days / mean of the last 28 days
//   uncoupled ratio          U = mean of the last 7 days / mean of the 21 days before them
//   identity                 C = 4 U / (U + 3), so C never exceeds 4 whatever was thrown
// Rival definitions: the ratio of two exponentially weighted averages (N = 7 and 28) [Williams2017]; rolling
// sums.
// Units: throws a day, or any other daily count; days without throws are 0, never left out. Range: 0 or more.
// Refuses: ratios of fewer than 28 days (too_few_data), and of a quiet time that divides by zero
// (method_does_not_apply): they are blank, not large.
// What it cannot tell: risk of injury. The last 7 days stand in both means of C, which alone makes
// independent weeks correlate by 0.5 [Lolli2019], and a made-up long average predicts about as well as the
// real one [Impellizzeri2020]. The tool therefore shows throws, averages and days of rest, and no ratio; the
// ratios are here to be checked.
//
// Example: 28 days of 50, then 7 of 100: C = 1.6, U = 2.0.
#pragma once

#include "values/refusal.h"

#include <span>
#include <vector>

namespace amentum {

double ewma_weight(int days);    // of the newest day; days N 1 or more
double ewma_half_life(int days); // in days; N 2 or more

std::vector<double> ewma(std::span<const double> daily, int days); // one value a day, as many as `daily`

double mean_of_last(std::span<const double> daily,
                    std::size_t days); // `daily` has at least that many, 1 or more

Result<double> coupled_ratio(std::span<const double> daily);
Result<double> uncoupled_ratio(std::span<const double> daily);
double coupled_from_uncoupled(double uncoupled_ratio);

} // namespace amentum
