#include "operations/inside/trace_answer.h"

#include "operations/inside/base64.h"
#include "operations/inside/efforts.h"
#include "reports/sentences.h"
#include "values/shortest_decimal.h"

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

std::string
base64_of(const std::vector<float>& samples) { // little-endian, as this machine's (statement.h asserts it)
    return to_base64({reinterpret_cast<const char*>(samples.data()), samples.size() * sizeof(float)});
}

ShownUnit unit_of_metric(const TraceMetric& metric, const Facility& facility) {
    if (metric.unit == "m")
        return shown_unit(TestUnit::metre, facility);
    return {metric.unit == "1" ? "" : metric.unit, 1.0, metric.decimals};
}

// The test kind's own errors when the number is a test, otherwise what is published for the number.
struct MetricError {
    std::optional<double> total; // standard deviation, in the metric's unit
    std::string words;
};

MetricError error_of(const TraceMetric& metric, const TestKind* kind, const ShownUnit& unit) {
    const std::string trace_words = metric.trace_error
                                        ? format_fixed(*metric.trace_error * unit.factor, unit.decimals + 1) +
                                              " " + unit.unit + " from this trace"
                                        : "the trace's own error is not known";
    if (kind) { // a trace's error is part of the error between trials
        const double day =
            kind->scale == Scale::logarithmic ? kind->day_error * std::abs(metric.value) : kind->day_error;
        const double trial = kind->scale == Scale::logarithmic ? kind->trial_error * std::abs(metric.value)
                                                               : kind->trial_error;
        return {std::hypot(day, std::max(trial, metric.trace_error.value_or(0))),
                trace_words + "; between trials and days as the test's (" +
                    format_fixed(100 * std::hypot(day, trial) / std::abs(metric.value), 1) + " %)"};
    }
    if (metric.day_error)
        return {std::hypot(*metric.day_error * metric.value, metric.trace_error.value_or(0)),
                trace_words + "; " + format_fixed(100 * *metric.day_error, 1) +
                    " % between days as published"};
    return {std::nullopt, trace_words + "; between days not known"};
}

ShownTraceMetric shown_metric(const TraceMetric& metric, const std::string& test,
                              const ReferenceTables& tables, const Facility& facility) {
    const ShownUnit unit = unit_of_metric(metric, facility);
    const auto error = error_of(metric, test.empty() ? nullptr : tables.test_kind(test), unit);
    ShownTraceMetric shown{
        metric.key,  metric.name, metric.value * unit.factor, {}, {}, unit.unit, unit.decimals, error.words,
        metric.note, test};
    if (error.total) {
        shown.low = (metric.value - z80 * *error.total) * unit.factor;
        shown.high = (metric.value + z80 * *error.total) * unit.factor;
    }
    return shown;
}

std::string last_reason(const std::vector<EventMove>& moves, const std::string& event) {
    for (auto move = moves.rbegin(); move != moves.rend(); ++move)
        if (move->event == event)
            return move->seconds ? move->reason : "";
    return "";
}

} // namespace

std::vector<ShownTraceMetric> shown_metrics(const TraceMeasurement& measured, const ReferenceTables& tables,
                                            const Facility& facility) {
    std::vector<ShownTraceMetric> shown;
    for (const auto& metric : measured.metrics)
        shown.push_back(shown_metric(metric, test_of_metric(measured.given, metric.key), tables, facility));
    return shown;
}

ShownTrace shown_trace(const TraceShowing& showing, const ReferenceTables& tables, const Facility& facility) {
    const auto& recording = showing.recording;
    ShownTrace shown{recording.rate_hz,
                     static_cast<int>(recording.samples()),
                     recording.seconds(),
                     {},
                     word(showing.given.test),
                     effort_words(showing.given.test).name,
                     word(showing.given.legs),
                     0,
                     0,
                     {},
                     {},
                     {},
                     recording.notes,
                     {},
                     {},
                     {},
                     {}};
    for (const auto& plate : recording.plates)
        shown.plates.push_back(
            {plate.name, word(plate.side), showing.with_samples ? base64_of(plate.vertical) : std::string()});
    if (!showing.measured) {
        shown.refusal = shown_refusal(showing.measured.refusal());
        return shown;
    }
    const auto& measured = *showing.measured;
    shown.body_weight_n = measured.body_weight_n;
    shown.body_weight_error_n = measured.body_weight_error_n;
    for (const auto& event : measured.events)
        shown.events.push_back({event.key, event.name, event.automatic_s, event.used_s, event.movable,
                                showing.given.moved_events.contains(event.key),
                                last_reason(showing.moves, event.key)});
    for (const auto& phase : measured.phases)
        shown.phases.push_back({phase.key, phase.name, phase.from_s, phase.to_s});
    shown.metrics = shown_metrics(measured, tables, facility);
    shown.corrections = measured.corrections;
    shown.warnings = measured.warnings;
    shown.sources = measured.sources;
    return shown;
}

TraceAnswer trace_answer(const KeptTrace& trace, const Result<TraceMeasurement>& measured,
                         const Athlete& athlete, bool with_samples, const ReferenceTables& tables,
                         const Facility& facility) {
    const TraceGiven given = given_of(trace);
    TraceAnswer answer{trace.id,
                       athlete.id.text,
                       athlete.name,
                       trace.date.text(),
                       trace.trial,
                       trace.file_name,
                       static_cast<int>(std::min<std::int64_t>(trace.file_bytes, 2'000'000'000)),
                       trace.file_digest,
                       trace.device,
                       trace.note,
                       {},
                       {},
                       {}};
    answer.measured =
        shown_trace({trace.recording, given, measured, trace.moves, with_samples}, tables, facility);
    for (const auto& move : trace.moves)
        answer.moves.push_back({move.event, move.seconds, move.reason, move.moved_on.text()});
    answer.words = words_of_trace(answer.measured);
    return answer;
}

std::vector<std::string> words_of_trace(const ShownTrace& trace) {
    if (trace.refusal)
        return {"Refused (" + std::to_string(trace.refusal->code) + "): " + trace.refusal->sentence};
    std::vector<std::string> words;
    for (const auto& metric : trace.metrics) {
        std::string line = metric.name + ": " + format_fixed(metric.value, metric.decimals) +
                           (metric.unit.empty() ? "" : " " + metric.unit);
        if (metric.low)
            line += " (" + format_fixed(*metric.low, metric.decimals) + " to " +
                    format_fixed(*metric.high, metric.decimals) + ")";
        words.push_back(line);
    }
    return words;
}

} // namespace amentum
