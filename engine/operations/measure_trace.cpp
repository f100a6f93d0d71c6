#include "operations/measure_trace.h"

#include "operations/inside/trace_answer.h"

namespace amentum {

Result<MeasureTraceAnswer> measure_trace(Workplace& workplace, const MeasureTraceRequest& request) {
    auto& inside = workplace.inside();
    const auto settings = trace_settings(request, inside.today());
    if (!settings)
        return settings.refusal();
    const auto read = read_trace(inside, request, settings->recording);
    if (!read)
        return read.refusal();
    const auto measured = measure_trace(read->recording, settings->trace);
    MeasureTraceAnswer answer{shown_trace({read->recording, settings->trace, measured, settings->moves,
                                           request.samples.value_or(false)},
                                          inside.tables, inside.facility()),
                              {},
                              {}};
    answer.refusal = answer.trace.refusal;
    answer.words = words_of_trace(answer.trace);
    return answer;
}

} // namespace amentum
