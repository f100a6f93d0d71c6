// A force trace as it is kept: whose it is, what it is said to show, every sample, and each event a person has moved.
//
// The samples are those read from the file (force_recording.h), bit for bit, so that measuring again gives the same
// numbers. Moves are only added: the last one of an event counts, a move without a time goes back to the automatic one.
// An athlete, day, effort, legs and trial name one trace.
#pragma once

#include "recordings/force_recording.h"
#include "values/athlete.h"
#include "values/calendar_date.h"

#include <cstdint>
#include <map>

namespace amentum {

struct EventMove {
    std::string event;             // key of the event: take_off
    std::optional<double> seconds; // from the first sample; none: as the method finds it
    std::string reason;
    Date moved_on;

    friend bool operator==(const EventMove&, const EventMove&) = default;
};

struct KeptTrace {
    std::string id; // made where the file was first seen: the same id is the same trace
    AthleteId athlete;
    Date date;
    std::string effort; // word of TraceTest: countermovement_jump
    std::string legs;   // word of Legs: both, left, right
    int trial;          // 1 to 60
    std::string file_name;
    std::int64_t file_bytes;
    std::string file_digest; // of the file's bytes: tells whether a file at hand is this one
    std::optional<Mass> body_mass;
    std::optional<Length> box_height;
    std::string device;
    std::string note;
    ForceRecording recording; // without samples in a list of traces
    std::vector<EventMove> moves = {};
};

// The times that stand above the method's, after all moves.
std::map<std::string, double> moved_events(const std::vector<EventMove>& moves);

} // namespace amentum
