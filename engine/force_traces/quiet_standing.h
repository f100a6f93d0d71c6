// When did the athlete stand still, and what did the plates then read?
//
// The quietest second (smallest SD) within a given span of the trace is found, not assumed to be the first:
//   W = mean force of that second [Owen2014];  SD with n - 1
//   sample noise   SD of successive differences / sqrt(2): what one sample adds, free of slow sway
//   error of W     SD / sqrt(n); when the means of ten tenths of that second scatter by more than 1.5 times what white
//                  noise would make, their SD / sqrt(10): sway does not average out like noise
// Units: N, s. Refusals: less than a second of loaded plate (quiet_too_short); SD above 2 % of W on two feet, 3.5 % on
//   one (quiet_too_noisy). 1 s is published; 2 and 3.5 % are this project's proposals: 5 SD is the threshold of the
//   start, and from 10 % of W on it comes late [DosSantos2017].
// What it cannot tell: a hand on a rail, a tight bar or a heavy shirt weigh as the body does. Sway slower than the
//   second: the same athlete weighs differently from second to second by W error times 1 to 2.
// Example: 784.5 N with white noise of 2 N at 1,000 Hz -> error 0.063 N
#pragma once

#include "force_traces/force_signal.h"

#include <limits>
#include <optional>

namespace amentum {

inline constexpr double quiet_seconds = 1;

struct QuietStanding {
    SampleSpan span;
    double weight_n;
    double sd_n;
    double sample_sd_n; // white noise of one sample
    double error_n;     // standard error of weight_n
};

// The quietest second inside `within` whose mean lies between 150 N and highest_mean_n; nothing when there is none.
std::optional<SampleSpan> quietest_second(const ForceSignal& signal, SampleSpan within,
                                          double highest_mean_n = std::numeric_limits<double>::infinity());

QuietStanding weigh(const ForceSignal& signal, SampleSpan span);

Refusal refuse_short_quiet(double seconds_before, const std::string& before_what);
std::optional<Refusal> refuse_noisy_quiet(const QuietStanding& quiet, bool on_one_leg);

} // namespace amentum
