// How hard, and how fast, was a pull against a bar that does not move (mid-thigh pull, isometric squat)?
//
//   start           where the force crosses W + 5 SD upward for good (k = max(5, 5 ms) samples), after the last 0.1 s
//                   within that band; between two samples by a straight line [DosSantos2017]. Thresholds of 10 % of W or
//                   75 N come late and raise the early forces; a curve rising like 1 - exp(-t / tau) to dF crosses
//                   the threshold h by -tau ln(1 - h / dF) late.
//   peak force      gross, and net of body weight; both are given, for both are in use
//   force at t      50, 100, 150, 200, 250 ms after the start, gross and net
//   impulse to t    of the net force
//   rate to t       (F(t) - F(0)) / t; and the highest over 20 ms [Haff2015]. Retest correlations of rates run from 0.03 to
//                   0.96 [Moir2018]: each carries that note.
//   share of legs   leg_share.h, over the first 250 ms and to the peak
// Nothing is smoothed: a 10 Hz filter lowers early forces by 1.2 to 3.3 % [DosSantos2018].
// Units: N, s, N s, N/s. Body weight: the quietest second before the peak that lies below three quarters of it.
// Refusals: no such second (quiet_too_short; not_this_effort when the trace never rises a third above weight); noise
//   (quiet_too_noisy); peak within the last 0.1 s (peak_at_end); a dip of more than 200 N just before the pull
//   (not_this_effort), from memory of [Comfort2019]; 605 to 607; moved events out of order.
// Warned: a dip of more than 50 N (this project's proposal).
// What it cannot tell: body weight under a bar already pulled tight, which then counts as weight; the will to pull.
// Example: net 2000 (1 - exp(-t / 0.15)) N -> 973 N net at 100 ms, 54.0 N s to there
#pragma once

#include "force_traces/trace_measurement.h"
#include "recordings/force_recording.h"
#include "values/refusal.h"

namespace amentum {

Result<TraceMeasurement> measure_pull(const ForceRecording& recording, const TraceGiven& given);

} // namespace amentum
