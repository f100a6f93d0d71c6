#include "force_traces/measure_jump.h"

#include "force_traces/inside/jump_metrics.h"
#include "values/shortest_decimal.h"

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

using inside::JumpView;

constexpr double shallowest_dip_m = 0.03;
constexpr double deepest_dip_of_squat_m = 0.05;
constexpr double slowest_take_off = 0.4;

double dip_of(const JumpView& view) {
    double least = 0;
    for (std::size_t i = view.start; i <= view.take_off; ++i)
        least = std::min(least, view.curves.rise(i));
    return -least;
}

std::optional<Refusal> refuse_other_effort(const JumpView& view, bool with_dip) {
    const auto refuse = [&](const std::string& sentence, const std::string& given,
                            const std::string& allowed) {
        return inside::with_corrections({RefusalCode::not_this_effort, sentence, "vertical", given, allowed},
                                        view.trace);
    };
    const double speed = view.curves.speed(view.take_off), dip = dip_of(view);
    if (speed < slowest_take_off)
        return refuse("The body left the plates at " + format_fixed(speed, 2) +
                          " m/s upward: a step off, or a start that was not at rest, not a jump.",
                      format_fixed(speed, 2) + " m/s", "at least 0.4 m/s");
    if (with_dip && dip < shallowest_dip_m)
        return refuse("There is no dip before this jump (" + format_fixed(100 * dip, 1) +
                          " cm): it looks like a jump from a held squat.",
                      format_fixed(100 * dip, 1) + " cm", "a dip of at least 3 cm, or squat_jump");
    if (!with_dip && dip > deepest_dip_of_squat_m)
        return refuse("The body sinks by " + format_fixed(100 * dip, 1) +
                          " cm before this jump: it is no jump from a held squat.",
                      format_fixed(100 * dip, 1) + " cm", "a dip of at most 5 cm, or countermovement_jump");
    return std::nullopt;
}

std::optional<Refusal> refuse_second_hop(const JumpView& view) {
    if (!view.landing)
        return std::nullopt;
    for (const auto& air : view.trace.airs) {
        const bool later = air.take_off && air.landing && *air.take_off > *view.landing;
        if (later && (!view.rest || *air.take_off < *view.rest))
            return inside::with_corrections(
                {RefusalCode::second_hop,
                 "There is another take-off at " + format_fixed(view.trace.signal.seconds(*air.take_off), 2) +
                     " s, before the landing came to rest: one jump cannot be told from the next.",
                 "vertical", format_fixed(view.trace.signal.seconds(*air.take_off), 2) + " s",
                 "one jump, landed and held for half a second"},
                view.trace);
    }
    return std::nullopt;
}

void add_phases(const JumpView& view, bool with_dip, TraceMeasurement& into) {
    const auto add = [&](const char* key, const char* name, std::size_t from, std::size_t to) {
        into.phases.push_back(inside::phase(view.trace, key, name, from, to));
    };
    add("weighing", "Weighing", view.quiet.span.from, std::min(view.quiet.span.to, view.start));
    if (with_dip) {
        add("unweighting", "Unweighting", view.start, view.lowest_speed);
        add("braking", "Braking", view.lowest_speed, view.lowest);
    }
    add("propulsion", "Propulsion", view.lowest, view.take_off);
    if (view.landing) {
        add("flight", "Flight", view.take_off, *view.landing);
        add("landing", "Landing", *view.landing, view.rest.value_or(view.trace.last()));
    }
}

} // namespace

Result<TraceMeasurement> measure_jump(const ForceRecording& recording, const TraceGiven& given) {
    const bool with_dip = given.test == TraceTest::countermovement_jump;
    const auto trace = inside::prepare_trace(recording);
    if (!trace)
        return trace.refusal();
    inside::TraceEvents events(given, trace->signal);
    const auto view = inside::view_jump(*trace, given, events, with_dip, false);
    if (!view)
        return view.refusal();
    if (auto refusal = refuse_second_hop(*view))
        return *refusal;
    if (auto refusal = refuse_other_effort(*view, with_dip))
        return *refusal;
    auto placed = events.finish();
    if (!placed)
        return placed.refusal();
    TraceMeasurement measured = inside::begin_measurement(*trace, given, view->quiet);
    measured.events = std::move(placed).value();
    add_phases(*view, with_dip, measured);
    inside::add_jump_metrics(*view, with_dip, measured);
    inside::add_jump_warnings(*view, with_dip, measured);
    measured.sources = {"Owen2014", "McMahon2018", "Linthorne2001", "Moir2008", "Baumgart2017"};
    return measured;
}

} // namespace amentum
