#include "operations/traces.h"

#include "force_traces/compare_trials.h"
#include "operations/inside/efforts.h"
#include "operations/inside/trace_answer.h"
#include "values/shortest_decimal.h"

#include <algorithm>

namespace amentum {
namespace {

struct Wanted {
    std::optional<Date> date;
    std::optional<TraceTest> effort;
};

Result<Wanted> wanted(const TracesRequest& request) {
    Wanted wanted;
    if (request.date) {
        const auto date = parse_date(*request.date, "date");
        if (!date)
            return date.refusal();
        wanted.date = *date;
    }
    if (request.effort) {
        wanted.effort = from_word<TraceTest>(*request.effort);
        if (!wanted.effort)
            return refuse_choice("effort", *request.effort, all_words<TraceTest>());
    }
    return wanted;
}

bool in_group(const TraceGroup& group, const KeptTrace& trace) {
    return group.date == trace.date.text() && group.effort == trace.effort && group.legs == trace.legs;
}

TraceTrial shown_trial(const KeptTrace& trace, const Result<TraceMeasurement>& measured,
                       const ReferenceTables& tables, const Facility& facility) {
    TraceTrial trial{trace.id, trace.trial, trace.file_name, !moved_events(trace.moves).empty(), {}, {}, {}};
    if (!measured) {
        trial.refusal = shown_refusal(measured.refusal());
        return trial;
    }
    trial.metrics = shown_metrics(*measured, tables, facility);
    trial.warnings = measured->warnings;
    return trial;
}

void add_comparison(TraceGroup& group, const std::vector<TraceMeasurement>& measured,
                    const Facility& facility) {
    if (measured.size() < 2)
        return;
    const auto compared = compare_trials(measured);
    if (!compared)
        return;
    for (const auto& each : compared->metrics) {
        const auto shown = each.unit == "m"
                               ? shown_unit(TestUnit::metre, facility)
                               : ShownUnit{each.unit == "1" ? "" : each.unit, 1.0, each.decimals};
        const auto said = [&](double x) {
            return format_fixed(x * shown.factor, shown.decimals) +
                   (shown.unit.empty() ? "" : " " + shown.unit);
        };
        const std::string words = each.allowed_range
                                      ? "the trials differ by " + said(each.range) + "; up to " +
                                            said(*each.allowed_range) + " is usual"
                                      : "no published limit";
        group.spreads.push_back({each.key, each.name, each.mean * shown.factor, each.spread * shown.factor,
                                 shown.unit, shown.decimals, words, !each.agrees});
    }
    if (!compared->disagreements.empty())
        group.disagreement = shown_refusal(compared->disagreements.front());
}

} // namespace

Result<TracesAnswer> traces(Workplace& workplace, const TracesRequest& request) {
    auto& inside = workplace.inside();
    const auto view = inside.view();
    const auto athlete = athlete_named(*view, request.athlete);
    if (!athlete)
        return athlete.refusal();
    const auto only = wanted(request);
    if (!only)
        return only.refusal();
    const auto facility = inside.facility();
    TracesAnswer answer{(*athlete)->id.text, (*athlete)->name, {}, {}, {}};
    std::vector<TraceMeasurement> measured_in_group;
    for (const auto& listed : inside.store.list_traces((*athlete)->id)) {
        if ((only->date && listed.date != *only->date) ||
            (only->effort && listed.effort != word(*only->effort)))
            continue;
        const auto trace = inside.store.load_trace(listed.id);
        if (!trace)
            continue; // taken away between the two looks
        const TraceGiven given = given_of(*trace);
        const auto measured = measure_trace(trace->recording, given);
        if (answer.groups.empty() || !in_group(answer.groups.back(), *trace)) {
            if (!answer.groups.empty())
                add_comparison(answer.groups.back(), measured_in_group, facility);
            measured_in_group.clear();
            answer.groups.push_back(
                {trace->date.text(), trace->effort, effort_words(given.test).name, trace->legs, {}, {}, {}});
        }
        answer.groups.back().trials.push_back(shown_trial(*trace, measured, inside.tables, facility));
        if (measured)
            measured_in_group.push_back(*measured);
    }
    if (!answer.groups.empty())
        add_comparison(answer.groups.back(), measured_in_group, facility);
    std::stable_sort(answer.groups.begin(), answer.groups.end(),
                     [](const auto& a, const auto& b) { return a.date > b.date; });
    for (const auto& each : all_efforts())
        answer.efforts.push_back(
            {word(each.effort), each.name, each.protocol, each.needs_box_height, each.one_leg});
    if (answer.groups.empty())
        answer.words.push_back("No force trace of " + (*athlete)->name + " is kept.");
    return answer;
}

} // namespace amentum
