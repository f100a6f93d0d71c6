// The efforts a force plate can record: their names for people, how each is done, and which readings each gives.
//
// The protocols are the usual ones of the trade; common practice, no source, where none is named.
#pragma once

#include "force_traces/trace_measurement.h"
#include "recordings/kept_trace.h"
#include "values/reading.h"

#include <string>
#include <vector>

namespace amentum {

struct EffortWords {
    TraceTest effort;
    const char* name;
    const char* protocol;
    bool needs_box_height;
    bool one_leg; // only one leg at a time
};

const EffortWords& effort_words(TraceTest effort);
const std::vector<EffortWords>& all_efforts();

// The test kind a number of this effort is a reading of; empty when it is shown only.
std::string test_of_metric(const TraceGiven& given, const std::string& metric);

// The readings a measured trace gives, in the order of their test kinds.
std::vector<Reading> readings_of_trace(const KeptTrace& trace, const TraceMeasurement& measured);

} // namespace amentum
