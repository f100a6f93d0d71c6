// trace: one kept force trace, with every sample, its numbers and each move of an event.
#pragma once

#include "operations/shown_trace.h"
#include "operations/workplace.h"
#include "values/refusal.h"

namespace amentum {

struct TraceRequest {
    std::string trace;           // its id
    std::optional<bool> samples; // true: with the samples, to draw them
};
BOOST_DESCRIBE_STRUCT(TraceRequest, (), (trace, samples))

struct ShownMove {
    std::string event;
    std::optional<double> time_s; // none: back to the automatic time
    std::string reason;
    std::string moved_on;
};
BOOST_DESCRIBE_STRUCT(ShownMove, (), (event, time_s, reason, moved_on))

struct TraceAnswer {
    std::string trace;
    std::string athlete;
    std::string name;
    std::string date;
    int trial;
    std::string file_name;
    int file_bytes;
    std::string file_digest;
    std::string device;
    std::string note;
    ShownTrace measured;
    std::vector<ShownMove> moves; // all, in their order
    std::vector<std::string> words;
};
BOOST_DESCRIBE_STRUCT(TraceAnswer, (),
                      (trace, athlete, name, date, trial, file_name, file_bytes, file_digest, device, note,
                       measured, moves, words))

Result<TraceAnswer> trace(Workplace&, const TraceRequest&);

} // namespace amentum
