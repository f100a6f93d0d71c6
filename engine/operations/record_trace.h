// record_trace: keep a force trace whole, with the readings it gives; a trace that is refused is not kept.
//
// Its main numbers become readings of their test kinds (jump_height_plate, jump_peak_power, ...) and move the athlete's
// trajectories like any test. The same key again changes nothing.
#pragma once

#include "operations/measure_trace.h"

namespace amentum {

struct RecordTraceRequest : MeasureTraceRequest {
    // Made on the device, 8 to 64 letters, digits or '-'; left out: made from the file's bytes, athlete, day and effort.
    std::optional<std::string> key;
    std::string athlete;
    std::string date;
    std::optional<int> trial; // left out: the next one of that day
    std::optional<std::string> device;
    std::optional<std::string> note;
};
BOOST_DESCRIBE_STRUCT(RecordTraceRequest, (MeasureTraceRequest), (key, athlete, date, trial, device, note))

struct RecordTraceAnswer {
    bool saved;
    bool held_before;
    std::string trace; // its id, for `trace` and `move_event`
    int trial;
    ShownTrace measured;
    std::vector<std::string> words;
};
BOOST_DESCRIBE_STRUCT(RecordTraceAnswer, (), (saved, held_before, trace, trial, measured, words))

Result<RecordTraceAnswer> record_trace(Workplace&, const RecordTraceRequest&);

} // namespace amentum
