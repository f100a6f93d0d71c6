// One jump from standing: its weighing, its events and its curves, ready to be read.
#pragma once

#include "force_traces/inside/metric_rows.h"
#include "force_traces/inside/prepared_trace.h"
#include "force_traces/jump_curves.h"

namespace amentum::inside {

struct JumpView {
    const PreparedTrace& trace;
    const TraceGiven& given;
    QuietStanding quiet;
    TraceNoise noise;
    JumpCurves curves; // from the start to the end of the trace, or to take-off when there is no landing
    bool rise_first;   // the movement began upward
    std::size_t start;
    std::size_t lowest_speed; // both only for a jump with a dip; else the start
    std::size_t lowest;
    std::size_t take_off;
    std::optional<std::size_t> landing;
    std::optional<std::size_t> rest;

    double seconds(std::size_t from, std::size_t to) const {
        return static_cast<double>(to - from) / trace.signal.rate_hz;
    }
    double to_take_off_s() const { return seconds(start, take_off); }
};

// Finds and places weighing, start, lowest_speed and lowest (with a dip), take-off, landing and rest.
Result<JumpView> view_jump(const PreparedTrace& trace, const TraceGiven& given, TraceEvents& events,
                           bool with_dip, bool landing_needed);

struct Peak {
    std::size_t sample;
    double value;
};
Peak highest_force(const ForceSignal& signal, std::size_t from, std::size_t to);
Peak highest_power(const JumpView& view);
double mean_power(const JumpView& view); // from the lowest point to take-off

double error_of_start_s(const JumpView& view);

} // namespace amentum::inside
