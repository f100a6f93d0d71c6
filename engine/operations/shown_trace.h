// A force trace as an answer shows it: the samples to draw, the events, the phases, the numbers with their errors.
//
// Times are seconds from the first sample. Heights are in the facility's unit, everything else in SI. A number's
// interval is the central 80 % for the athlete's level: the trace's own error and the error between days together. Where
// no error between days is published there is no interval; `error_words` then gives the trace's own error alone.
// Samples travel as base64 of 32-bit floats, little-endian, newtons, upward positive.
#pragma once

#include "operations/shown.h"

#include <boost/describe/class.hpp>

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace amentum {

struct ShownPlate {
    std::string name;    // as the file names it
    std::string side;    // left, right, none
    std::string samples; // base64; empty when samples were not asked for
};
BOOST_DESCRIBE_STRUCT(ShownPlate, (), (name, side, samples))

struct ShownTraceEvent {
    std::string event; // key: take_off
    std::string name;  // "Take-off"
    double automatic_s;
    double used_s;
    bool movable;
    bool moved;
    std::string reason; // of the last move; empty without one
};
BOOST_DESCRIBE_STRUCT(ShownTraceEvent, (), (event, name, automatic_s, used_s, movable, moved, reason))

struct ShownTracePhase {
    std::string phase;
    std::string name;
    double from_s;
    double to_s;
};
BOOST_DESCRIBE_STRUCT(ShownTracePhase, (), (phase, name, from_s, to_s))

struct ShownTraceMetric {
    std::string metric;
    std::string name;
    double value;
    std::optional<double> low; // none when the error between days is not known
    std::optional<double> high;
    std::string unit;
    int decimals;
    std::string error_words; // "0.3 cm from this trace, 5.8 % between days"
    std::string note;
    std::string test; // the test kind this number is kept as a reading of; empty when it is shown only
};
BOOST_DESCRIBE_STRUCT(ShownTraceMetric, (),
                      (metric, name, value, low, high, unit, decimals, error_words, note, test))

struct ShownTrace {
    double rate_hz;
    int samples;
    double seconds;
    std::vector<ShownPlate> plates;
    std::string effort;      // countermovement_jump
    std::string effort_name; // "Countermovement jump"
    std::string legs;
    double body_weight_n; // 0 when the trace is refused
    double body_weight_error_n;
    std::vector<ShownTraceEvent> events;
    std::vector<ShownTracePhase> phases;
    std::vector<ShownTraceMetric> metrics;
    std::vector<std::string> file_notes; // what was found while reading the file
    std::vector<std::string> corrections;
    std::vector<std::string> warnings;
    std::vector<std::string> sources;
    std::optional<ShownRefusal> refusal; // the samples could be read, but not measured
};
BOOST_DESCRIBE_STRUCT(ShownTrace, (),
                      (rate_hz, samples, seconds, plates, effort, effort_name, legs, body_weight_n,
                       body_weight_error_n, events, phases, metrics, file_notes, corrections, warnings,
                       sources, refusal))

struct MoveGiven {
    std::string event;
    std::optional<double> time_s; // left out: back to the automatic time
    std::string reason;
};
BOOST_DESCRIBE_STRUCT(MoveGiven, (), (event, time_s, reason))

} // namespace amentum
