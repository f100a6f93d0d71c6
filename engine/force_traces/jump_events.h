// When did the movement start, the feet leave, the feet come down, and the body come to rest?
//
// Contact: more than max(10 N, 5 SD of the unloaded plates) above their zero, for k = max(5, 5 ms) samples in a row, so
//   that a spike fools nobody. Searched from the middle of each unloaded span outwards. take_off is the first sample
//   without contact, landing the first with it. Rivals: a fixed 10 N [Pmc9750644]; 5 SD alone, which fails on a plate
//   set to zero by its device (SD 0).
// Start: the first of k samples in a row further than 5 SD (at least 0.5 % of W) from W on one side, up or down, after
//   the last stretch of 0.1 s within that band; the movement is taken to start 30 ms before [Owen2014]. So a rise on
//   the toes before the dip belongs to the movement, and a shuffle a second earlier does not.
// Rest: the first sample after landing from which the force stays within 5 % of W (at least 5 SD) for 0.5 s (the 5 %
//   and 0.5 s are this project's proposals).
// What it cannot tell: a movement slower than 5 SD; feet leaving one by one (the last one counts).
// Example: closed-form countermovement jump, 1,000 Hz -> take-off 2.330 s
#pragma once

#include "force_traces/plate_zero.h"
#include "force_traces/quiet_standing.h"

namespace amentum {

struct AirTime {                         // one unloaded span, with its edges where the trace has them
    std::optional<std::size_t> take_off; // none when the trace starts with an empty plate
    std::optional<std::size_t> landing;  // none when it ends so
};

double contact_threshold_n(const PlateZero& zero);
std::size_t samples_in_a_row(double rate_hz);

// By time; the force has its zero line taken off already.
std::vector<AirTime> air_times(const ForceSignal& signal, const PlateZero& zero);

struct MovementStart {
    std::size_t start;    // 30 ms before the crossing; it may reach into the quiet second
    std::size_t crossing; // the first sample out of the band
    bool upward;
};

// Nothing when the force never leaves the band between the quiet second and `until`.
std::optional<MovementStart> movement_start(const ForceSignal& signal, const QuietStanding& quiet,
                                            std::size_t until);

std::optional<std::size_t> rest_after(const ForceSignal& signal, const QuietStanding& quiet,
                                      SampleSpan within);

} // namespace amentum
