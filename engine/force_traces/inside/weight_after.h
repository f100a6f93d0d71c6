// Body weight where nobody stood still before the effort: from the standing after it, or from a scale.
#pragma once

#include "force_traces/inside/prepared_trace.h"

namespace amentum::inside {

// The quietest second of `within`; else the given body mass, with an error of half a percent of it (a scale and
// clothes; this project's proposal) and an empty span; else the refusal that says what is missing.
Result<QuietStanding> weight_after(const PreparedTrace& trace, const TraceGiven& given, TraceEvents& events,
                                   SampleSpan within);

// Body weight from the scale alone.
QuietStanding weight_by_scale(const PreparedTrace& trace, double body_mass_kg);

} // namespace amentum::inside
