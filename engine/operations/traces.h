// traces: one athlete's kept traces, day by day, the trials of each effort side by side.
#pragma once

#include "operations/shown_trace.h"
#include "operations/workplace.h"
#include "values/refusal.h"

namespace amentum {

struct TracesRequest {
    std::string athlete;
    std::optional<std::string> date;   // one day
    std::optional<std::string> effort; // one effort
};
BOOST_DESCRIBE_STRUCT(TracesRequest, (), (athlete, date, effort))

struct TraceTrial {
    std::string trace;
    int trial;
    std::string file_name;
    bool moved; // an event was moved by hand
    std::vector<ShownTraceMetric> metrics;
    std::vector<std::string> warnings;
    std::optional<ShownRefusal> refusal;
};
BOOST_DESCRIBE_STRUCT(TraceTrial, (), (trace, trial, file_name, moved, metrics, warnings, refusal))

struct TrialSpread { // of one metric over the day's trials
    std::string metric;
    std::string name;
    double mean;
    double spread; // standard deviation between trials
    std::string unit;
    int decimals;
    std::string words; // "within the method's limit" or what to repeat
    bool disagree;
};
BOOST_DESCRIBE_STRUCT(TrialSpread, (), (metric, name, mean, spread, unit, decimals, words, disagree))

struct TraceGroup { // one day, effort and legs
    std::string date;
    std::string effort;
    std::string effort_name;
    std::string legs;
    std::vector<TraceTrial> trials;
    std::vector<TrialSpread> spreads; // from two trials on
    std::optional<ShownRefusal> disagreement;
};
BOOST_DESCRIBE_STRUCT(TraceGroup, (), (date, effort, effort_name, legs, trials, spreads, disagreement))

struct EffortOffered {
    std::string effort;
    std::string name;
    std::string protocol; // how it is done, in a sentence or two
    bool needs_box_height;
    bool one_leg;
};
BOOST_DESCRIBE_STRUCT(EffortOffered, (), (effort, name, protocol, needs_box_height, one_leg))

struct TracesAnswer {
    std::string athlete;
    std::string name;
    std::vector<TraceGroup> groups; // newest first
    std::vector<EffortOffered> efforts;
    std::vector<std::string> words;
};
BOOST_DESCRIBE_STRUCT(TracesAnswer, (), (athlete, name, groups, efforts, words))

Result<TracesAnswer> traces(Workplace&, const TracesRequest&);

} // namespace amentum
