#include "force_traces/inside/jump_view.h"

#include <algorithm>
#include <cmath>

namespace amentum::inside {
namespace {

struct Edges {
    std::size_t take_off;
    std::optional<std::size_t> landing;
};

Result<Edges> place_edges(const PreparedTrace& trace, TraceEvents& events, bool landing_needed) {
    const auto air = jump_of(trace, landing_needed);
    if (!air)
        return air.refusal();
    const auto take_off = events.place("take_off", "Take-off", *air->take_off, 2, trace.last());
    if (!take_off)
        return take_off.refusal();
    if (!air->landing)
        return Edges{*take_off, std::nullopt};
    const auto landing = events.place("landing", "Landing", *air->landing, *take_off + 1, trace.last());
    if (!landing)
        return landing.refusal();
    return Edges{*take_off, *landing};
}

std::size_t index_of_least(const std::vector<double>& curve, std::size_t origin, std::size_t from,
                           std::size_t to) {
    const auto begin = curve.begin() + static_cast<std::ptrdiff_t>(from - origin);
    const auto end = curve.begin() + static_cast<std::ptrdiff_t>(to - origin + 1);
    return from + static_cast<std::size_t>(std::min_element(begin, end) - begin);
}

std::optional<Refusal> place_dip(JumpView& view, TraceEvents& events) {
    const std::size_t slowest = index_of_least(view.curves.speed_ms, view.start, view.start, view.take_off);
    const auto lowest_speed =
        events.place("lowest_speed", "Fastest downward", slowest, view.start, view.take_off - 1);
    if (!lowest_speed)
        return lowest_speed.refusal();
    view.lowest_speed = *lowest_speed;
    const std::size_t deepest = index_of_least(view.curves.rise_m, view.start, slowest, view.take_off);
    const auto lowest = events.place("lowest", "Lowest point", deepest, view.lowest_speed, view.take_off - 1);
    if (!lowest)
        return lowest.refusal();
    view.lowest = *lowest;
    return std::nullopt;
}

std::optional<std::size_t> place_rest(const PreparedTrace& trace, const QuietStanding& quiet,
                                      const Edges& edges, TraceEvents& events) {
    if (!edges.landing)
        return std::nullopt;
    const auto rest = rest_after(trace.signal, quiet, {*edges.landing, trace.last() + 1});
    if (rest)
        events.show("settled", "At rest after landing", *rest);
    return rest;
}

Refusal refuse_no_start(const PreparedTrace& trace) {
    return with_corrections(
        {RefusalCode::not_this_effort,
         "Between quiet standing and take-off the force never leaves what standing shows: no "
         "start of a movement can be found.",
         "vertical", "", "a jump from standing still"},
        trace);
}

} // namespace

Result<JumpView> view_jump(const PreparedTrace& trace, const TraceGiven& given, TraceEvents& events,
                           bool with_dip, bool landing_needed) {
    const auto edges = place_edges(trace, events, landing_needed);
    if (!edges)
        return edges.refusal();
    const SampleSpan stance{stance_before(trace, edges->take_off), edges->take_off};
    const auto quiet =
        place_quiet(trace, given, events, stance, "take-off", std::numeric_limits<double>::infinity());
    if (!quiet)
        return quiet.refusal();
    const auto moving = movement_start(trace.signal, *quiet, edges->take_off);
    if (!moving && !given.moved_events.contains("onset"))
        return refuse_no_start(trace);
    const auto start = events.place("onset", "Start of the movement", moving ? moving->start : quiet->span.to,
                                    quiet->span.from, edges->take_off - 2);
    if (!start)
        return start.refusal();
    const std::size_t end = edges->landing ? trace.last() + 1 : edges->take_off + 1;
    JumpView view{trace,
                  given,
                  *quiet,
                  trace.noise(*quiet),
                  integrate_force(trace.signal, quiet->weight_n, {*start, end}),
                  moving && moving->upward,
                  *start,
                  *start,
                  *start,
                  edges->take_off,
                  edges->landing,
                  place_rest(trace, *quiet, *edges, events)};
    if (with_dip)
        if (auto refusal = place_dip(view, events))
            return *refusal;
    return view;
}

Peak highest_force(const ForceSignal& signal, std::size_t from, std::size_t to) {
    const auto begin = signal.vertical.begin();
    const auto top = std::max_element(begin + static_cast<std::ptrdiff_t>(from),
                                      begin + static_cast<std::ptrdiff_t>(to + 1));
    return {static_cast<std::size_t>(top - begin), *top};
}

Peak highest_power(const JumpView& view) {
    Peak peak{view.start, 0};
    for (std::size_t i = view.start; i <= view.take_off; ++i) {
        const double power = view.trace.signal.vertical[i] * view.curves.speed(i);
        if (power > peak.value)
            peak = {i, power};
    }
    return peak;
}

double mean_power(const JumpView& view) {
    const auto power = [&](std::size_t i) { return view.trace.signal.vertical[i] * view.curves.speed(i); };
    double sum = 0;
    for (std::size_t i = view.lowest; i < view.take_off; ++i)
        sum += power(i) + power(i + 1);
    return sum / 2 / static_cast<double>(view.take_off - view.lowest);
}

// The instant of leaving the band: one sample's noise over the slope there, and the sample grid.
double error_of_start_s(const JumpView& view) {
    const std::size_t row = samples_in_a_row(view.trace.signal.rate_hz);
    const std::size_t lead = view.trace.signal.samples_in(0.030);
    const std::size_t from = std::min(view.start + lead, view.take_off - 1),
                      to = std::min(from + row, view.take_off);
    const auto& force = view.trace.signal.vertical;
    const double slope = std::abs(force[to] - force[from]) / view.seconds(from, to);
    const double by_noise = slope > 0 ? view.noise.sample_sd_n / slope : 0;
    return root_of_squares(std::min(by_noise, 0.030), grid_error_s(view.noise));
}

} // namespace amentum::inside
