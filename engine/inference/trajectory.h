// Where a quality is on any day, from irregular tests with known errors: a latent random walk, exactly
// filtered.
//
//   y_t = theta_t + e_t,  e_t ~ N(0, r_t);   theta_t = theta_s + w,  w ~ N(0, q (t - s))
// Start: exact diffuse (the first test gives mean y, variance r), or a proper prior N(m, v) on the first
// day.
// Filter: V += q dt; F = V + r; m += V e / F; V = V r / F. Smoother of Rauch, Tung and Striebel with J = V
// / (V + q dt).
// Log-likelihood in the restricted convention: the first, diffuse observation adds nothing, (n - 1) log 2
// pi  [DurbinKoopman2012, chapter 2; RauchTungStriebel1965].
// Units: those of the values; days are whole numbers, rising; several tests of one day are taken one after
// another.
// Cost: O(n), no allocation but the points.
// Outliers: an innovation beyond 4 sqrt(F) is flagged, never dropped.
// What it cannot tell: a jump from a slow change between two tests; whether tests are missing because of
// pain.
//
// Example: the Nile's flow at Aswan with r = 15099, q = 1469.1 a step (one year) is 798.37 in 1970,
// variance 4032.16.
#pragma once

#include <optional>
#include <span>
#include <vector>

namespace amentum {

struct DatedValue {
    int day; // any epoch, not falling
    double value;
    double variance; // of the error of this value, above 0
};

struct StateOnDay {
    double mean;
    double variance;
};

struct TrajectoryPoint {
    int day;
    StateOnDay filtered;        // given the tests up to and with this one
    StateOnDay smoothed;        // given all tests
    double innovation;          // value minus its forecast; 0 for a diffuse first test
    double innovation_variance; // F; 0 for a diffuse first test
    double next_gain;           // J: smoother gain towards the next point; 0 at the last
    bool far_from_expected;     // |innovation| > 4 sqrt(F)
};

struct Trajectory {
    std::vector<TrajectoryPoint> points; // one a test, in order; never empty
    double drift;                        // q, variance a day
    double log_likelihood;

    StateOnDay state_on(int day) const; // smoothed between the tests, forecast outside them
    double forecast_variance(int day,
                             double error_variance) const; // of a new test on that day, at or after the last
    double covariance_between(std::size_t earlier, std::size_t later) const; // of two smoothed points
};

// Contract: at least one value, days not falling, variances above 0 (that of the prior too), drift 0 or
// above.
Trajectory estimate_trajectory(std::span<const DatedValue> values, double drift,
                               const std::optional<StateOnDay>& prior = std::nullopt);

// What all the other tests, earlier and later ones, expect of each test: its own part taken out of the smoothed level,
// precision 1/V - 1/r, mean (m/V - y/r) over it; the variance with the test's own error. Exact.
// Contract: that of estimate_trajectory, and two tests or a prior: something must be left.
struct LeftOut {
    StateOnDay expected;
    double log_density; // of the test's value there
};
std::vector<LeftOut> leave_one_out(std::span<const DatedValue> values, double drift,
                                   const std::optional<StateOnDay>& prior = std::nullopt);

} // namespace amentum
