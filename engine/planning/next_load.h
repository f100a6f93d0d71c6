// By how much does what was done differ from what was written, and what does that change in the next sets?
//
//   n          = repetitions + repetitions in reserve of a set                              [Zourdos2016]
//   capacity   = load (1 + n / 30), Epley's line; the load itself at n = 1                  [Epley1985]
//   ratio      = capacity of the sets done / capacity the written sets ask for
//   difference = (ratio - 1)(30 + n written), in repetitions; with the written load on the bar, n done - n written
//   within one repetition   nothing changes: so well do people judge it                    [Halperin2022]
//   more                    next load x ratio, at most 10 % up                              [ACSM2009]
//   less                    next load x ratio
//   a set failed            as less, and at least 5 % down for legs, 2.5 % for the rest     (proposal of this
//                           project, after the steps down of a maximum test in [Baechle2008])
// A set fails when it ended before the written repetitions with nothing left, or with nothing said about what was left.
// A reserve above 5 counts as 5 [Hackett2017]. Of several sets the middle one counts (the lower of two), of failed ones the
// weakest. Epley's line is not read above n = 15.
// Units: any, the same for both loads; what is lifted in all, so pull-ups count the body. Range: n 1 to 15.
// What it cannot tell: why. A bad night, a wrong plate and a new strength look the same here.
//
// Example: written 100 kg x 5 with 2 in reserve, done 100 kg x 5 with 4 left -> ratio 130 / 123.33 = 1.054, difference +2.
#pragma once

#include "values/block.h"

#include <optional>
#include <vector>

namespace amentum {

inline constexpr double most_step_up = 0.10, least_step_up = 0.02; // [ACSM2009]
inline constexpr double most_trusted_reserve = 5;                  // [Hackett2017]
inline constexpr double most_repetitions_of_line = 15;             // of Epley's line
inline constexpr double least_step_down_legs = 0.05, least_step_down_other = 0.025;

// What a set was to be: what is lifted in all, repetitions and reserve.
struct SetWritten {
    double lifted;
    int reps;
    double reserve;
};

struct SetShown {
    double lifted;
    int reps;
    std::optional<double> reserve;
};

struct SetDifference {
    double ratio;       // of capacities
    double repetitions; // more (or less, below 0) than written
    bool failed;
    double lifted; // by the set that counted
};

double epley_factor(double repetitions); // 1 + n / 30, and 1 at n = 1 or less

bool failed(const SetWritten& written, const SetShown& shown);

// None when no set says anything about what was left, or Epley's line does not reach.
std::optional<SetDifference> measure_difference(const SetWritten& written, const std::vector<SetShown>& sets);

enum class Direction { as_written, up, down };
Direction direction_of(const SetDifference& difference);

// The factor on the next written load, within the bounds above; 1 as written.
double next_factor(const SetDifference& difference, bool legs);

} // namespace amentum
