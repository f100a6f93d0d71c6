// Weights of draws from one density that stand for another, with their largest smoothed: Pareto-smoothed importance sampling.
//
// r = log target - log proposal, up to a constant. The M = min(S / 5, 3 sqrt S) largest ratios are replaced by the expected
// order statistics of a generalised Pareto distribution fitted to them, none above the largest ratio, and all made to
// sum to 1 [Vehtari2024]. The fit is the empirical Bayes one of [ZhangStephens2009], its shape drawn towards 1/2 by ten
// observations' worth [Vehtari2024, appendix].
// tail_shape: k-hat. Moments of the ratios exist up to 1 / k: below `tail_shape_limit` weighted means can be believed; above it
// they cannot, and no smoothing helps.
// Valid: 25 or more ratios (asserted), none NaN, the largest finite; minus infinity is a weight of 0.
// Infinite tail_shape: nothing to tell the tail by. 0: all ratios alike to 1e-9, so that there is no tail.
// What it cannot tell: parts of the target no draw came to.
//
// Example: target and proposal the same: weights all 1 / S.
#pragma once

#include <Eigen/Dense>

namespace amentum {

struct ImportanceWeights {
    Eigen::VectorXd weights; // of the draws as given, sum 1
    double tail_shape;       // k-hat
    double size;             // 1 / sum of squares: what the draws are worth
};

ImportanceWeights smooth_importance(const Eigen::VectorXd& log_ratios);

double tail_shape_limit(Eigen::Index draws); // min(1 - 1 / log10 S, 0.7)

// The generalised Pareto distribution 1 - (1 + k x / scale)^(-1/k) of rising positive x, without the pull towards 1/2.
struct ParetoTail {
    double shape, scale;
};
ParetoTail fit_pareto_tail(const Eigen::VectorXd& rising);

double weighted_mean(const Eigen::VectorXd& values, const Eigen::VectorXd& weights);
double weighted_variance(const Eigen::VectorXd& values,
                         const Eigen::VectorXd& weights); // about the weighted mean
double weighted_share_below(const Eigen::VectorXd& values, const Eigen::VectorXd& weights, double limit);
// The least value that a share p of the weight does not exceed; 0 < p < 1.
double weighted_quantile(const Eigen::VectorXd& values, const Eigen::VectorXd& weights, double p);
// The Monte Carlo standard error of weighted_mean: sqrt(sum w^2 (x - mean)^2).
double weighted_mean_error(const Eigen::VectorXd& values, const Eigen::VectorXd& weights);

} // namespace amentum
