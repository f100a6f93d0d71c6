// A recording made ready: summed, its zero taken off, its empty spans known. Every measure starts here.
#pragma once

#include "force_traces/inside/trace_events.h"
#include "force_traces/jump_events.h"
#include "force_traces/trace_errors.h"

namespace amentum::inside {

struct PreparedTrace {
    const ForceRecording& recording;
    ForceSignal signal;
    PlateZero zero;
    std::vector<AirTime> airs;

    std::size_t last() const { return signal.vertical.size() - 1; }
    TraceNoise noise(const QuietStanding& quiet) const;
};

Result<PreparedTrace> prepare_trace(const ForceRecording& recording);

// A refusal that comes after the zero was measured says what was found there too.
Refusal with_corrections(Refusal refusal, const PreparedTrace& trace);

// The measurement so far: weight, corrections, the warnings every test shares.
TraceMeasurement begin_measurement(const PreparedTrace& trace, const TraceGiven& given,
                                   const QuietStanding& quiet);

// Places quiet_from and quiet_to around the quietest second of `within`, and weighs; refuses what cannot be weighed.
Result<QuietStanding> place_quiet(const PreparedTrace& trace, const TraceGiven& given, TraceEvents& events,
                                  SampleSpan within, const std::string& before_what, double highest_mean_n);

// The air time that is the jump of the trace: the first flight with its landing after a second on the plates, else the
// first flight; else, when no landing is needed, the first leaving. Refuses no_flight when nobody left.
Result<AirTime> jump_of(const PreparedTrace& trace, bool landing_needed);

// Start of the second's search: the landing of the air time before, or the first sample.
std::size_t stance_before(const PreparedTrace& trace, std::size_t take_off);

TracePhase phase(const PreparedTrace& trace, const std::string& key, const std::string& name,
                 std::size_t from, std::size_t to);

} // namespace amentum::inside
