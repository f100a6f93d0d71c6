#include "inference/block_excess.h"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace amentum {
namespace {

struct Reading {
    double value, variance;
};

Reading without_session(const RosterFit& fit, const RosterReading& r) {
    const auto k = static_cast<std::size_t>(r.quality);
    const double error = fit.error_sd[k] * fit.error_sd[k] * r.share;
    const double spread = fit.mode.session_spread.empty() ? 0 : fit.mode.session_spread[k];
    if (r.session < 0)
        return {r.value, error};
    if (static_cast<std::size_t>(r.session) >= fit.mode.session.size())
        return {r.value, error + spread * spread};
    const Estimate& shift = fit.mode.session[static_cast<std::size_t>(r.session)];
    return {r.value - shift.value, error + shift.standard_error * shift.standard_error};
}

// All results of the quality on one day, weighted by 1 / variance; none when there are none.
std::optional<DayResult> result_of(const RosterFit& fit, const RosterDay& day, int quality) {
    double weights = 0, sum = 0, read = 0;
    for (const auto& r : day.readings)
        if (r.quality == quality) {
            const auto [value, variance] = without_session(fit, r);
            weights += 1 / variance;
            sum += value / variance;
            read += r.value / variance;
        }
    if (weights == 0)
        return std::nullopt;
    return DayResult{day.day, sum / weights, 1 / weights, read / weights};
}

double mean_of(std::span<const double> values) {
    double sum = 0;
    for (const double each : values)
        sum += each;
    return sum / static_cast<double>(values.size());
}

double variance_of(std::span<const double> values) {
    const double mean = mean_of(values);
    double squares = 0;
    for (const double each : values)
        squares += (each - mean) * (each - mean);
    return squares / static_cast<double>(values.size() - 1);
}

double signed_root(double x) {
    return x < 0 ? -std::sqrt(-x) : std::sqrt(x);
}

} // namespace

Estimate BlockExcess::excess() const {
    return {observed - forecast.mean, std::sqrt(variance)};
}

std::vector<DayResult> results_of(const RosterFit& fit, const RosterAthlete& athlete, int quality) {
    std::vector<DayResult> results;
    for (const auto& day : athlete.days)
        if (const auto result = result_of(fit, day, quality))
            results.push_back(*result);
    return results;
}

std::optional<BlockExcess> measure_block_excess(const RosterFit& fit, const RosterAthlete& athlete,
                                                const BlockDays& days, int quality) {
    std::optional<DayResult> before, after;
    for (const auto& result : results_of(fit, athlete, quality)) {
        if (result.day <= days.start)
            before = result;
        else if (days.after_from <= result.day && result.day <= days.after_until && (!after || days.last))
            after = result;
    }
    if (!before || !after)
        return std::nullopt;
    const auto ahead = forecast_state(fit.mode, athlete, days.start, after->day, quality);
    return BlockExcess{before->day,  after->day,  before->as_read,
                       after->value, ahead.state, ahead.state.variance + after->variance};
}

std::vector<StateOnDay> forecast_without_block(const RosterFit& fit, const RosterAthlete& athlete, int start,
                                               std::span<const int> on, int quality) {
    RosterAthlete known = athlete;
    std::erase_if(known.days, [&](const RosterDay& day) { return day.day > start; });
    const AthleteStates states(fit.mode, known, on);
    std::vector<StateOnDay> band;
    for (const int day : on)
        band.push_back(states.known_then(day, quality));
    return band;
}

ComparisonGroup estimate_comparison(std::span<const Estimate> excesses) {
    assert(excesses.size() >= 2);
    double weights = 0, sum = 0, scatter = 0;
    for (const auto& each : excesses) {
        const double weight = 1 / (each.standard_error * each.standard_error);
        weights += weight;
        sum += weight * each.value;
    }
    const double mean = sum / weights;
    for (const auto& each : excesses)
        scatter += std::pow((each.value - mean) / each.standard_error, 2);
    const double more = std::max(1.0, scatter / static_cast<double>(excesses.size() - 1));
    return {static_cast<int>(excesses.size()), {mean, std::sqrt(more / weights)}};
}

IndividualResponses estimate_individual_responses(std::span<const double> with_block,
                                                  std::span<const double> without) {
    assert(with_block.size() >= 2 && without.size() >= 2);
    const double a = variance_of(with_block), b = variance_of(without);
    const double of_a = 2 * a * a / static_cast<double>(with_block.size() - 1);
    const double of_b = 2 * b * b / static_cast<double>(without.size() - 1);
    const Interval squared = Estimate{a - b, std::sqrt(of_a + of_b)}.central();
    return {signed_root(a - b), {signed_root(squared.low), signed_root(squared.high)}};
}

} // namespace amentum
