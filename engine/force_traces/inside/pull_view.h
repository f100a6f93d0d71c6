// One pull against a fixed bar: its weighing, start and peak, and the force between the samples.
#pragma once

#include "force_traces/inside/prepared_trace.h"

namespace amentum::inside {

struct PullView {
    const PreparedTrace& trace;
    QuietStanding quiet;
    TraceNoise noise;
    double start_s;
    double start_error_s;
    std::size_t peak;
    double dip_n; // below weight, between the last calm tenth of a second and the start

    double force_at(double seconds) const;                // straight line between samples
    double slope_at(double seconds) const;                // N/s, over 5 ms on both sides
    double net_impulse(double from_s, double to_s) const; // N s
};

Result<PullView> view_pull(const PreparedTrace& trace, const TraceGiven& given, TraceEvents& events);

} // namespace amentum::inside
