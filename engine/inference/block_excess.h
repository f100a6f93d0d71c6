// What did an athlete's test after a block show beyond the forecast without the block?
//
//   forecast   mean f and variance P of the state on the test's day from all readings up to the block's start
//              (forecast_state of athlete_states.h: growth, random walk, regression to the mean come with it)
//   excess     e = y - f;  variance P + r + s      y: the day's result, its session's shift taken off; r: its error; s: the
//                                                  session's doubt
//   beside     e - c;  c: mean excess of athletes without a block over the same weeks, weighted by 1 / variance; its variance
//              1 / sum of weights, times Q / (n - 1) when they scatter more than their errors say [Birge1932]
//   individual SD^2 of excesses with a block - SD^2 without one, never one of them alone [Williamson2017]; its variance
//   responses  2 (SD^4 / (n - 1) of both together), as of sample variances of normal values; interval by the normal, roots
//              with their sign
// Without a block's effect e / sqrt(variance) is N(0, 1): a direction said from nine chances in ten on is wrong one time in
// ten. The roster's own numbers are held at their mode; what that adds is counted in tests/laws/block_excess_laws_test.
// Units: the readings'. Range: sampled groups of 2 or more (asserted).
// What it cannot tell: why; getting used to a test, the season and everything else that came with the block. Excesses of
// athletes without a block over the same weeks take out what all had in common, no more.
//
// Example: mean 80, between SD 4, error SD 1.2, no drift; 74 before, 76 after: forecast 74.495413, not 74; excess 1.504587.
#pragma once

#include "inference/athlete_states.h"

#include <optional>
#include <span>

namespace amentum {

struct BlockDays {
    int start;         // readings up to and with this day are known
    int after_from;    // the test after the block lies from here
    int after_until;   // to here
    bool last = false; // the last test of these days, not the first
};

struct BlockExcess {
    int before; // day of the last reading of this quality up to the start
    int after;
    double before_value; // as read
    double observed;     // session's shift taken off
    StateOnDay forecast; // of the state
    double variance;     // of observed - forecast
    Estimate excess() const;
};

struct DayResult { // all readings of a quality on one day, weighted by 1 / variance
    int day;
    double value; // sessions' shifts taken off
    double variance;
    double as_read;
};
std::vector<DayResult> results_of(const RosterFit& fit, const RosterAthlete& athlete, int quality);

// None when the quality was not read up to the start or not in the days after.
std::optional<BlockExcess> measure_block_excess(const RosterFit& fit, const RosterAthlete& athlete,
                                                const BlockDays& days, int quality);

// The state without the block on each of `on` (rising, from the start on), for a drawn band.
std::vector<StateOnDay> forecast_without_block(const RosterFit& fit, const RosterAthlete& athlete, int start,
                                               std::span<const int> on, int quality);

struct ComparisonGroup {
    int athletes;
    Estimate mean; // of their excesses
};
ComparisonGroup estimate_comparison(std::span<const Estimate> excesses);

struct IndividualResponses {
    double sd;        // negative: excesses scatter less with a block than without
    Interval central; // 80 %
};
IndividualResponses estimate_individual_responses(std::span<const double> with_block,
                                                  std::span<const double> without);

} // namespace amentum
