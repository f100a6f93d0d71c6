// Events as they are placed: the method's time, or the coach's where one was given, in their order.
#pragma once

#include "force_traces/force_signal.h"
#include "force_traces/trace_measurement.h"

#include <optional>

namespace amentum::inside {

class TraceEvents {
public:
    TraceEvents(const TraceGiven& given, const ForceSignal& signal) : given_(given), signal_(signal) {}

    // The sample to use: the coach's when the event was moved, else `automatic`; it must lie within low and high.
    Result<std::size_t> place(const std::string& key, const std::string& name, std::size_t automatic,
                              std::size_t low, std::size_t high);

    // An event that is shown but cannot be moved.
    void show(const std::string& key, const std::string& name, std::size_t sample);

    // As place(), for an instant between the samples.
    Result<double> place_seconds(const std::string& key, const std::string& name, double automatic_s,
                                 double low_s, double high_s);

    // By time; refuses a moved event that this test does not have.
    Result<std::vector<TraceEvent>> finish() const;

private:
    const TraceGiven& given_;
    const ForceSignal& signal_;
    std::vector<TraceEvent> events_;
    std::string last_moved_; // to blame when an event left alone falls out of its place
};

} // namespace amentum::inside
