#include "inference/trajectory.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <numbers>

namespace amentum {
namespace {

constexpr double outlier_limit = 4.0; // SDs of the innovation; proposal of this project, no source

// The forward pass: fills filtered states, innovations and the likelihood.
void filter(std::span<const DatedValue> values, double drift, const std::optional<StateOnDay>& prior,
            Trajectory& out) {
    StateOnDay state = prior.value_or(StateOnDay{0, 0});
    bool diffuse = !prior;
    for (std::size_t i = 0; i < values.size(); ++i) {
        const auto& y = values[i];
        if (i > 0)
            state.variance += drift * (y.day - values[i - 1].day);
        TrajectoryPoint point{y.day, {}, {}, 0, 0, 0, false};
        if (diffuse) {
            state = {y.value, y.variance};
            diffuse = false;
        } else {
            const double f = state.variance + y.variance;
            const double e = y.value - state.mean;
            out.log_likelihood -= 0.5 * (std::log(2 * std::numbers::pi * f) + e * e / f);
            state.mean += state.variance * e / f;
            state.variance *= y.variance / f;
            point.innovation = e;
            point.innovation_variance = f;
            point.far_from_expected = std::abs(e) > outlier_limit * std::sqrt(f);
        }
        point.filtered = state;
        out.points.push_back(point);
    }
}

// The backward pass of Rauch, Tung and Striebel.
void smooth(Trajectory& out) {
    auto& points = out.points;
    points.back().smoothed = points.back().filtered;
    for (std::size_t i = points.size() - 1; i-- > 0;) {
        const auto& next = points[i + 1];
        auto& here = points[i];
        const double forecast = here.filtered.variance + out.drift * (next.day - here.day);
        const double gain = here.filtered.variance / forecast;
        here.next_gain = gain;
        here.smoothed.mean = here.filtered.mean + gain * (next.smoothed.mean - here.filtered.mean);
        here.smoothed.variance = here.filtered.variance + gain * gain * (next.smoothed.variance - forecast);
    }
}

} // namespace

StateOnDay Trajectory::state_on(int day) const {
    const auto after =
        std::find_if(points.begin(), points.end(), [&](const auto& p) { return p.day >= day; });
    if (after == points.end())
        return {points.back().smoothed.mean,
                points.back().smoothed.variance + drift * (day - points.back().day)};
    if (after->day == day)
        return after->smoothed;
    if (after == points.begin())
        return {after->smoothed.mean, after->smoothed.variance + drift * (after->day - day)};
    // One smoother step from the later test back to the day between, which has no test of its own.
    const auto& before = *(after - 1);
    const double here = before.filtered.variance + drift * (day - before.day);
    const double forecast = before.filtered.variance + drift * (after->day - before.day);
    const double gain = here / forecast;
    return {before.filtered.mean + gain * (after->smoothed.mean - before.filtered.mean),
            here + gain * gain * (after->smoothed.variance - forecast)};
}

double Trajectory::forecast_variance(int day, double error_variance) const {
    assert(day >= points.back().day);
    return state_on(day).variance + error_variance;
}

double Trajectory::covariance_between(std::size_t earlier, std::size_t later) const {
    assert(earlier <= later && later < points.size());
    double covariance = points[later].smoothed.variance;
    for (std::size_t i = earlier; i < later; ++i)
        covariance *= points[i].next_gain;
    return covariance;
}

Trajectory estimate_trajectory(std::span<const DatedValue> values, double drift,
                               const std::optional<StateOnDay>& prior) {
    assert(!values.empty() && drift >= 0 && (!prior || prior->variance > 0));
    assert(std::is_sorted(values.begin(), values.end(),
                          [](const auto& a, const auto& b) { return a.day < b.day; }));
    assert(std::all_of(values.begin(), values.end(), [](const auto& v) { return v.variance > 0; }));
    Trajectory out{{}, drift, 0};
    filter(values, drift, prior, out);
    smooth(out);
    return out;
}

std::vector<LeftOut> leave_one_out(std::span<const DatedValue> values, double drift,
                                   const std::optional<StateOnDay>& prior) {
    assert(values.size() > 1 || prior);
    const Trajectory whole = estimate_trajectory(values, drift, prior);
    std::vector<LeftOut> out;
    for (std::size_t i = 0; i < values.size(); ++i) {
        const auto& y = values[i];
        const StateOnDay& level = whole.points[i].smoothed;
        const double variance = 1 / (1 / level.variance - 1 / y.variance);
        const double mean = variance * (level.mean / level.variance - y.value / y.variance);
        const double f = variance + y.variance, e = y.value - mean;
        out.push_back({{mean, f}, -0.5 * (std::log(2 * std::numbers::pi * f) + e * e / f)});
    }
    return out;
}

} // namespace amentum
