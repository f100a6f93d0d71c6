// How was a phase's push shared between the legs?
//
//   share = 100 (L - R) / (L + R) %,  L and R the impulses of the two plates over the phase [Bishop2016]
// The sign stays: positive means more on the left. Rivals: eight other formulas are in use, several of which lose the
// sign or double the number [Bishop2016]; ours reads 5.263 % for 900 against 1000.
// Error, from the trace alone: dL = sqrt((zero error T)^2 + sigma^2 T d), dR likewise,
//   200 sqrt((R dL)^2 + (L dR)^2) / (L + R)^2.
// Needs two plates with a left and a right foot. What it cannot tell: whether a difference matters. Two legs jumping
//   together and each alone are different tests [Bishop2018], and a share that changes more between trials than it
//   differs from zero is no side difference. No limit here says anything about injury.
// Example: left 100 N s, right 90 N s -> 5.26 %, more on the left
#pragma once

#include "force_traces/plate_zero.h"

#include <optional>

namespace amentum {

struct LegShare {
    double percent; // left minus right, over both
    double error;
};

std::optional<LegShare> leg_share(const ForceRecording& recording, const PlateZero& zero, double sample_sd_n,
                                  SampleSpan span);

} // namespace amentum
