#include "inference/change.h"

#include <boost/math/distributions/students_t.hpp>

#include <cassert>
#include <cmath>

namespace amentum {
namespace {

constexpr double sure_enough = 0.9;      // proposal of this project, no source
constexpr double worthwhile_share = 0.2; // of the between-athlete SD [Hopkins2004]
constexpr double published_z =
    1.96; // as printed in the formula of the smallest detectable difference [Weir2005]

ChangeVerdict verdict_of(double gained, double lost) {
    if (gained >= sure_enough)
        return ChangeVerdict::gained;
    if (lost >= sure_enough)
        return ChangeVerdict::lost;
    return ChangeVerdict::cannot_tell;
}

double flat_chance(const MeasuredChange& change) {
    const double z = (change.difference - change.smallest_worthwhile) / change.standard_error;
    if (!change.degrees_of_freedom)
        return normal_cdf(z);
    return boost::math::cdf(boost::math::students_t(*change.degrees_of_freedom), z);
}

} // namespace

ChangeJudgement judge_measured_change(const MeasuredChange& change) {
    assert(change.standard_error > 0 && change.prior.variance > 0);
    const double noise = change.standard_error * change.standard_error;
    const double v = change.prior.variance;
    const double mean = (change.difference * v + change.prior.mean * noise) / (v + noise);
    const double sd = std::sqrt(v * noise / (v + noise));
    const double w = change.smallest_worthwhile;
    const double gained = normal_cdf((mean - w) / sd), lost = normal_cdf((-w - mean) / sd);
    return {{mean, sd}, gained, lost, flat_chance(change), verdict_of(gained, lost)};
}

ChangeJudgement judge_trajectory_change(const Trajectory& trajectory, std::size_t earlier, std::size_t later,
                                        double smallest_worthwhile, double expected_drift,
                                        double drift_standard_error) {
    assert(earlier < later && later < trajectory.points.size());
    const auto& first = trajectory.points[earlier].smoothed;
    const auto& last = trajectory.points[later].smoothed;
    const double variance =
        first.variance + last.variance - 2 * trajectory.covariance_between(earlier, later);
    return judge_known_change({last.mean - first.mean, variance}, smallest_worthwhile, expected_drift,
                              drift_standard_error);
}

ChangeJudgement judge_known_change(const StateOnDay& change, double smallest_worthwhile,
                                   double expected_drift, double drift_standard_error) {
    const double mean = change.mean - expected_drift;
    const double variance = change.variance + drift_standard_error * drift_standard_error;
    const double sd = std::sqrt(std::max(variance, 1e-18));
    const double gained = normal_cdf((mean - smallest_worthwhile) / sd);
    const double lost = normal_cdf((-smallest_worthwhile - mean) / sd);
    return {{mean, sd}, gained, lost, std::nullopt, verdict_of(gained, lost)};
}

double smallest_detectable_difference(double standard_error_first, double standard_error_second) {
    return published_z * std::hypot(standard_error_first, standard_error_second);
}

double smallest_worthwhile_change(std::span<const DatedValue> values) {
    assert(values.size() >= 2);
    const double n = static_cast<double>(values.size());
    double mean = 0, spread = 0, error = 0;
    for (const auto& value : values)
        mean += value.value / n, error += value.variance / n;
    for (const auto& value : values)
        spread += (value.value - mean) * (value.value - mean) / (n - 1);
    return worthwhile_share * std::sqrt(std::max(0.0, spread - error));
}

} // namespace amentum
