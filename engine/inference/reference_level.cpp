#include "inference/reference_level.h"

#include <Eigen/Dense>

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

constexpr int fewest_others = 6;   // proposal of this project, no source
constexpr int features = 7;
constexpr double usual_stature = 1.78, usual_mass = 78;  // stand-ins for what was never taped or weighed; only centring

using Features = Eigen::Matrix<double, features, 1>;
using Normal = Eigen::Matrix<double, features, features>;

// Scales are chosen so that one unit of each is about one SD of a mixed roster.
Features features_of(const Body& body) {
    Features x;
    x << 1.0, std::min(body.age_years - 18.0, 0.0) / 2.0, body.male ? 0.5 : -0.5,
        (std::log(body.stature_m.value_or(usual_stature)) - std::log(usual_stature)) / 0.05,
        (std::log(body.mass_kg.value_or(usual_mass)) - std::log(usual_mass)) / 0.18, body.softball ? 1.0 : 0.0,
        body.javelin ? 1.0 : 0.0;
    return x;
}

struct Fit {
    Features coefficients;
    Normal covariance;
    double residual_variance;
};

Fit fit_with(std::span<const Measured> others, double residual_variance, double spread, double mean) {
    Normal precision = Normal::Identity() / (spread * spread);
    precision(0, 0) = 1e-6 / (spread * spread);  // the intercept is free
    Features right = Features::Zero();
    for (const auto& other : others) {
        const Features x = features_of(other.body);
        const double weight = 1 / (residual_variance + other.variance);
        precision += weight * x * x.transpose();
        right += weight * (other.value - mean) * x;
    }
    const Normal covariance = precision.inverse();
    Features coefficients = covariance * right;
    double squares = 0, weights = 0;
    for (const auto& other : others) {
        const Features x = features_of(other.body);
        const double left = other.value - mean - coefficients.dot(x);
        squares += left * left + x.dot(covariance * x) - other.variance;
        weights += 1;
    }
    coefficients(0) += mean;
    return {coefficients, covariance, std::max(squares / weights, 0.01 * spread * spread)};
}

Fit fit(std::span<const Measured> others) {
    const double n = static_cast<double>(others.size());
    double mean = 0, square = 0;
    for (const auto& other : others) mean += other.value / n;
    for (const auto& other : others) square += (other.value - mean) * (other.value - mean) / (n - 1);
    const double spread = std::sqrt(std::max(square, 1e-12));
    Fit now = fit_with(others, square / 2, spread, mean);
    for (int round = 0; round < 25; ++round) now = fit_with(others, now.residual_variance, spread, mean);
    return now;
}

}  // namespace

ReferenceLevel estimate_reference_level(std::span<const Measured> others, const Body& athlete,
                                        const std::optional<DatedValue>& measured) {
    const int n = static_cast<int>(others.size());
    if (n < fewest_others)
        return {{0, 1}, 0, 0, n, "too few others here have that test to compare with (" + std::to_string(n) + ")"};
    const Fit model = fit(others);
    const Features x = features_of(athlete);
    const double s2 = model.residual_variance;
    const double unsure = x.dot(model.covariance * x);
    ReferenceLevel level{{0, 1}, model.coefficients.dot(x), std::sqrt(s2), n, ""};
    level.words = "compared with " + std::to_string(n) + " others here, allowing for age below 18, sex, stature, body mass and sport";
    if (!measured) {
        level.words = "not tested; taken as usual, give or take one standard deviation";
        return level;
    }
    // Posterior of u ~ N(0, s2) seen with error, in units of s.
    const double noise = measured->variance + unsure;
    level.z = {(measured->value - level.expected) * level.spread / (s2 + noise), noise / (s2 + noise)};
    return level;
}

}  // namespace amentum
