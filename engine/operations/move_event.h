// move_event: put an event of a kept trace where the coach saw it, with a reason; the automatic time stays beside it.
//
// The readings the trace gave are measured again and replaced in the same transaction. Without time_s the event goes
// back to its automatic time. A move that leaves the trace unmeasurable is refused and not kept.
#pragma once

#include "operations/trace.h"

namespace amentum {

struct MoveEventRequest {
    std::string trace;
    std::string event;
    std::optional<double> time_s;
    std::string reason; // at least ten characters
};
BOOST_DESCRIBE_STRUCT(MoveEventRequest, (), (trace, event, time_s, reason))

Result<TraceAnswer> move_event(Workplace&, const MoveEventRequest&);

} // namespace amentum
