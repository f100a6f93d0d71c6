#include "inference/reference_level.h"

#include <Eigen/Dense>

#include <algorithm>
#include <cmath>
#include <vector>

namespace amentum {
namespace {

constexpr std::size_t fewest_others = 6; // proposal of this project, no source
constexpr int rounds = 25;               // of the iterated moments; more change nothing in six digits
constexpr double least_share_of_spread = 0.01;
constexpr int features = 7;

// Of adults; stand-ins for what was never taped or weighed (from memory), and the centre of the covariates.
constexpr double usual_stature_m[] = {1.67, 1.80}; // female, male
constexpr double usual_mass_kg[] = {66, 84};

using Features = Eigen::Matrix<double, features, 1>;
using Normal = Eigen::Matrix<double, features, features>;

bool has_size(const BodySize& body) {
    return body.stature_m && body.mass_kg;
}
bool young(const BodySize& body) {
    return body.age_years < 18;
}
bool comparable(const BodySize& body) {
    return !young(body) || has_size(body);
}

// Scales are chosen so that one unit of each is about one SD of a mixed roster.
Features features_of(const BodySize& body) {
    const double stature = body.stature_m.value_or(usual_stature_m[body.male]);
    const double mass = body.mass_kg.value_or(usual_mass_kg[body.male]);
    Features x;
    x << 1.0, std::min(body.age_years - 18.0, 0.0) / 2.0, body.male ? 0.5 : -0.5,
        std::log(stature / 1.75) / 0.05, std::log(mass / 75.0) / 0.18, body.softball ? 1.0 : 0.0,
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
    precision(0, 0) = 1e-6 / (spread * spread); // the intercept is free
    Features right = Features::Zero();
    for (const auto& other : others) {
        const Features x = features_of(other.body);
        const double weight = 1 / (residual_variance + other.variance);
        precision += weight * x * x.transpose();
        right += weight * (other.value - mean) * x;
    }
    const Normal covariance = precision.inverse();
    Features coefficients = covariance * right;
    double squares = 0;
    for (const auto& other : others) {
        const Features x = features_of(other.body);
        const double left = other.value - mean - coefficients.dot(x);
        squares += left * left + x.dot(covariance * x) - other.variance;
    }
    coefficients(0) += mean;
    const double least = least_share_of_spread * spread * spread;
    return {coefficients, covariance, std::max(squares / static_cast<double>(others.size()), least)};
}

Fit fit(std::span<const Measured> others) {
    const double n = static_cast<double>(others.size());
    double mean = 0, square = 0;
    for (const auto& other : others)
        mean += other.value / n;
    for (const auto& other : others)
        square += (other.value - mean) * (other.value - mean) / (n - 1);
    const double spread = std::sqrt(std::max(square, 1e-12));
    Fit now = fit_with(others, square / 2, spread, mean);
    for (int round = 0; round < rounds; ++round)
        now = fit_with(others, now.residual_variance, spread, mean);
    return now;
}

std::string compared_with(std::size_t n, const BodySize& athlete) {
    std::string words = "compared with " + std::to_string(n) +
                        " others here, allowing for age below 18, sex, stature, body "
                        "mass and sport";
    if (!has_size(athlete))
        words += "; stature or body mass is not known and was taken as usual for an adult";
    if (young(athlete))
        words += "; below 18 age and size come first, and the level is what is left beside them";
    return words;
}

} // namespace

ReferenceLevel estimate_reference_level(std::span<const Measured> others, const BodySize& athlete,
                                        const std::optional<DatedValue>& measured) {
    std::vector<Measured> used;
    for (const auto& other : others)
        if (comparable(other.body))
            used.push_back(other);
    if (!comparable(athlete))
        return {{0, 1},
                0,
                0,
                0,
                "below 18 nobody is compared before stature and body mass are known; taken as usual, give "
                "or take one standard deviation"};
    if (used.size() < fewest_others)
        return {{0, 1},
                0,
                0,
                static_cast<int>(used.size()),
                "too few others here have that test to compare with (" + std::to_string(used.size()) +
                    "); taken as usual, give or take one standard deviation"};

    const Fit model = fit(used);
    const Features x = features_of(athlete);
    const double s2 = model.residual_variance;
    ReferenceLevel level{{0, 1}, model.coefficients.dot(x), std::sqrt(s2), static_cast<int>(used.size()), ""};
    if (!measured) {
        level.words = "not tested; taken as usual, give or take one standard deviation";
        return level;
    }
    // Posterior of u ~ N(0, s2) seen with error, in units of s.
    const double noise = measured->variance + x.dot(model.covariance * x);
    level.z = {(measured->value - level.expected) * level.spread / (s2 + noise), noise / (s2 + noise)};
    level.words = compared_with(used.size(), athlete);
    return level;
}

} // namespace amentum
