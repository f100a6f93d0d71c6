// From what a person says of a force trace to its measurement, and from that to what an answer shows.
#pragma once

#include "force_traces/measure_trace.h"
#include "operations/inside/given_file.h"
#include "operations/measure_trace.h"
#include "operations/trace.h"
#include "recordings/kept_trace.h"

namespace amentum {

// The request's words as values. Refuses unknown words, two units of one quantity, numbers outside their range, a
// move without a reason of ten characters.
struct TraceSettings {
    RecordingGiven recording;
    TraceGiven trace;
    std::vector<EventMove> moves;
};
Result<TraceSettings> trace_settings(const MeasureTraceRequest&, Date today);
Result<Done> check_move(const MoveGiven&, const std::string& path);

struct ReadTrace {
    GivenFile file;
    ForceRecording recording;
};
Result<ReadTrace> read_trace(Workplace::Inside&, const MeasureTraceRequest&, const RecordingGiven&);

// How a kept trace is measured: its words and its moves.
TraceGiven given_of(const KeptTrace&);

// What is shown of a recording; `measured` may be the refusal to measure it.
struct TraceShowing {
    const ForceRecording& recording;
    const TraceGiven& given;
    const Result<TraceMeasurement>& measured;
    const std::vector<EventMove>& moves;
    bool with_samples;
};
ShownTrace shown_trace(const TraceShowing&, const ReferenceTables&, const Facility&);
std::vector<ShownTraceMetric> shown_metrics(const TraceMeasurement&, const ReferenceTables&, const Facility&);

TraceAnswer trace_answer(const KeptTrace&, const Result<TraceMeasurement>&, const Athlete&, bool with_samples,
                         const ReferenceTables&, const Facility&);

// "Jump height from take-off speed: 35.6 cm (33.1 to 38.1)", the first few.
std::vector<std::string> words_of_trace(const ShownTrace&);

} // namespace amentum
