// A linear mixed model by exact restricted or full maximum likelihood, from sufficient statistics of each group.
//
//   y = X beta + Z_g b_g + sum_f s_f + e,   b_g ~ N(0, sigma^2 Lambda Lambda'),  s_f ~ N(0, sigma^2 tau_f^2),
//   e ~ N(0, sigma^2 / w), w the weight of a row, known; f: factors crossed with the groups (sessions), or nested in them
//
// sigma and beta are profiled out. With V = W^-1 + Z Lambda Lambda' Z' + sum_f tau_f^2 S_f S_f' and
// P = V^-1 - V^-1 X (X'V^-1 X)^-1 X'V^-1
//
//   REML   log|V| + log|X'V^-1 X| + (n - p)(1 + log(2 pi y'P y/(n - p)))            [Bates2015]
//   ML     log|V| + n (1 + log(2 pi y'P y / n))
//   d/dSigma (Sigma = Lambda Lambda')   sum_g Z'PZ - (n - p)/(y'Py) (Z'Py)(Z'Py)'   (ML: Z'V^-1 Z and n)
//
// Each evaluation costs O(groups (q^3 + q^2 p)), whatever the number of rows; crossed factors add a dense Schur complement
// of the number of all their levels. Minimised over Lambda and tau by a trust region with this gradient.
// A variance may be exactly 0; then its direction says so by `at_zero`.
// Units: those of y. Contract: sizes agree, group and level numbers start at 0, weights are above 0.
// Refusals: too_few_data (fewer rows than fixed effects + 2, one group, columns of X that repeat each other), and when the
// minimum is not found (`gradient` too large): never a fit that is not one.
// What it cannot tell: errors in X. A predictor measured with error gets a slope too close to zero, however many rows.
// Example: reaction times of 18 sleepers over 10 days [Belenky2003, as in Bates2015]: 251.405 + 10.467 a day
#pragma once

#include "values/refusal.h"

#include <vector>

namespace amentum {

enum class Likelihood { restricted, full };
enum class RandomShape { diagonal, full };

struct MixedRows {
    int fixed;
    int random;
    std::vector<double> y;
    std::vector<double> X;                 // row by row, `fixed` a row
    std::vector<double> Z;                 // row by row, `random` a row
    std::vector<int> group;                // of each row
    std::vector<std::vector<int>> crossed; // of each crossed factor, the level of each row; empty: none
    std::vector<double> weight = {};       // of each row; empty: all 1
};

struct MixedFit {
    std::vector<double> beta;
    std::vector<double> standard_error;
    std::vector<double> covariance;       // of the random effects, random x random, row by row
    std::vector<double> crossed_variance; // of each crossed factor
    double residual_variance;
    double criterion;                  // -2 log likelihood at the minimum
    std::vector<double> group_effects; // groups x random, row by row: conditional means
    std::vector<bool> at_zero;         // random effects whose variance is 0, then the crossed factors
    double gradient;                   // largest, of the criterion a group
    int evaluations;
    double log_likelihood() const { return -criterion / 2; }
};

Result<MixedFit> fit_mixed_model(const MixedRows& rows, RandomShape shape, Likelihood likelihood);

} // namespace amentum
