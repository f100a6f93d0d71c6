// What one trial on a force plate showed: its events, its phases, and its numbers, each with its error.
//
// This header holds the values; measure_trace.h makes them. SI throughout.
#pragma once

#include "values/enum_words.h"

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace amentum {

enum class TraceTest {
    countermovement_jump,
    squat_jump,
    drop_jump,
    repeated_hops,
    isometric_pull, // mid-thigh pull, or isometric squat
    lateral_bound,
};
template <>
inline constexpr std::array<std::pair<TraceTest, std::string_view>, 6> words_of<TraceTest>{
    {{TraceTest::countermovement_jump, "countermovement_jump"},
     {TraceTest::squat_jump, "squat_jump"},
     {TraceTest::drop_jump, "drop_jump"},
     {TraceTest::repeated_hops, "repeated_hops"},
     {TraceTest::isometric_pull, "isometric_pull"},
     {TraceTest::lateral_bound, "lateral_bound"}}};

enum class Legs { both, left, right };
template <>
inline constexpr std::array<std::pair<Legs, std::string_view>, 3> words_of<Legs>{
    {{Legs::both, "both"}, {Legs::left, "left"}, {Legs::right, "right"}}};

// An event the method found, and the time used: the coach may move it. Times are seconds from the first sample.
struct TraceEvent {
    std::string key;  // onset, take_off, landing, quiet_from, quiet_to, lowest, ...
    std::string name; // "Start of the movement"
    double automatic_s;
    double used_s;
    bool movable;
};

struct TracePhase {
    std::string key; // weighing, unweighting, braking, propulsion, flight, landing, contact, pull
    std::string name;
    double from_s;
    double to_s;
};

struct TraceMetric {
    std::string key;  // jump_height_impulse
    std::string name; // "Jump height from take-off speed"
    double value;
    std::string unit; // m, s, N, W, m/s, N s, N/s, 1, %
    int decimals;     // in that unit, as fine as its error allows
    std::optional<double>
        trace_error; // standard error from this trace alone: noise of quiet standing, time grid
    std::optional<double> day_error; // typical error between days as a fraction, where one is published
    std::string error_source;        // key of docs/sources.md for day_error; empty without one
    std::string note; // a sentence when the number needs one ("poor from day to day; do not act on it alone")
};

struct TraceGiven {
    TraceTest test;
    Legs legs = Legs::both;
    std::optional<double>
        body_mass_kg; // from a scale: compared with the weighing, needed when nobody stood still
    std::optional<double> box_height_m; // drop jump: shown beside the height the trace gives
    std::map<std::string, double>
        moved_events; // event key to seconds: the coach's word stands above the method's
};

struct TraceMeasurement {
    TraceGiven given;
    double body_weight_n;
    double body_weight_error_n;       // standard error of the mean over the weighing window
    std::vector<TraceEvent> events;   // by time
    std::vector<TracePhase> phases;   // by time, not overlapping
    std::vector<TraceMetric> metrics; // the ones a coach reads first come first
    std::vector<std::string>
        corrections;                   // offset, drift, clipping: what was done to the signal, with numbers
    std::vector<std::string> warnings; // whole sentences; the numbers stand, but read this
    std::vector<std::string> sources;

    const TraceMetric* metric(const std::string& key) const;
};

} // namespace amentum
