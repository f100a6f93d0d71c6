// measure_trace: what does this force-plate file show? Nothing is kept.
//
// The file's bytes come as base64 in `content`; on a command line the file is read from the disk, in pieces. A file
// that can be read but not measured is answered with its samples and the refusal, so that it can be looked at.
#pragma once

#include "operations/shown_trace.h"
#include "operations/workplace.h"
#include "values/refusal.h"

namespace amentum {

struct MeasureTraceRequest {
    std::string file_name;
    std::optional<std::string> content; // base64
    std::string effort;                 // countermovement_jump, squat_jump, drop_jump, ...
    std::optional<std::string> legs;    // both (when left out), left, right
    std::optional<double> body_mass_kg;
    std::optional<double> body_mass_lb;
    std::optional<double> box_height_cm;
    std::optional<double> box_height_in;
    std::optional<double> rate_hz;
    std::optional<std::string> unit; // N, kg, V
    std::optional<double> newtons_per_volt;
    std::vector<std::string> vertical; // columns or plates, left foot first
    std::vector<std::string> lateral;
    std::optional<bool> left_foot_on_second;
    std::vector<MoveGiven> moves;
    std::optional<bool> samples; // true: the samples come back too, to draw them
};
BOOST_DESCRIBE_STRUCT(MeasureTraceRequest, (),
                      (file_name, content, effort, legs, body_mass_kg, body_mass_lb, box_height_cm,
                       box_height_in, rate_hz, unit, newtons_per_volt, vertical, lateral, left_foot_on_second,
                       moves, samples))

struct MeasureTraceAnswer {
    ShownTrace trace;
    std::optional<ShownRefusal> refusal; // the trace's own, again, where a program looks for it
    std::vector<std::string> words;
};
BOOST_DESCRIBE_STRUCT(MeasureTraceAnswer, (), (trace, refusal, words))

Result<MeasureTraceAnswer> measure_trace(Workplace&, const MeasureTraceRequest&);

} // namespace amentum
