#include "operations/trace.h"

#include "operations/inside/trace_answer.h"
#include "operations/inside/trace_lookup.h"

namespace amentum {

Result<TraceAnswer> trace(Workplace& workplace, const TraceRequest& request) {
    auto& inside = workplace.inside();
    const auto held = trace_named(inside, request.trace);
    if (!held)
        return held.refusal();
    return trace_answer(held->trace, measure_trace(held->trace.recording, given_of(held->trace)),
                        held->athlete, request.samples.value_or(false), inside.tables, inside.facility());
}

} // namespace amentum
