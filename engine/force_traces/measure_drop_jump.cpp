#include "force_traces/measure_drop_jump.h"

#include "force_traces/inside/metric_rows.h"
#include "force_traces/inside/prepared_trace.h"
#include "force_traces/inside/weight_after.h"
#include "force_traces/jump_curves.h"
#include "values/shortest_decimal.h"

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

constexpr double g = gravity_at_plate;
constexpr double shortest_contact_s = 0.08, longest_contact_s = 1;

struct Drop {
    const inside::PreparedTrace& trace;
    QuietStanding quiet;
    TraceNoise noise;
    std::size_t touch_down, take_off, landing;
    std::size_t lowest;
    double speed_down; // m/s, positive
    double speed_up;
    double depth; // below the touch-down, m

    double contact_s() const { return static_cast<double>(take_off - touch_down) / trace.signal.rate_hz; }
    double flight_s() const { return static_cast<double>(landing - take_off) / trace.signal.rate_hz; }
};

struct Edges {
    std::size_t touch_down, take_off, landing;
};

Refusal refuse_effort(const inside::PreparedTrace& trace, const std::string& sentence,
                      const std::string& given, const std::string& allowed) {
    return inside::with_corrections({RefusalCode::not_this_effort, sentence, "vertical", given, allowed},
                                    trace);
}

// The first contact between an empty plate and a flight.
Result<Edges> find_edges(const inside::PreparedTrace& trace) {
    const auto flight = inside::jump_of(trace, true);
    if (!flight)
        return flight.refusal();
    for (std::size_t i = 0; i + 1 < trace.airs.size(); ++i) {
        const auto &before = trace.airs[i], &after = trace.airs[i + 1];
        if (!before.landing || !after.take_off || !after.landing)
            continue;
        const double contact = static_cast<double>(*after.take_off - *before.landing) / trace.signal.rate_hz;
        if (contact >= shortest_contact_s && contact <= longest_contact_s)
            return Edges{*before.landing, *after.take_off, *after.landing};
    }
    return refuse_effort(
        trace,
        "The trace shows no contact of 0.08 to 1 s between an empty plate and a flight: the drop must "
        "start beside the plate, from a box.",
        "", "empty plate, contact, flight, landing");
}

Result<Edges> place_edges(const inside::PreparedTrace& trace, inside::TraceEvents& events) {
    const auto found = find_edges(trace);
    if (!found)
        return found.refusal();
    const auto down = events.place("touch_down", "Touch-down", found->touch_down, 1, trace.last());
    if (!down)
        return down.refusal();
    const auto up = events.place("take_off", "Take-off", found->take_off, *down + 2, trace.last());
    if (!up)
        return up.refusal();
    const auto landing = events.place("landing", "Landing", found->landing, *up + 1, trace.last());
    if (!landing)
        return landing.refusal();
    return Edges{*down, *up, *landing};
}

// Summed from touch-down at -speed_down: lowest point and depth.
void find_lowest(Drop& drop) {
    const auto curves =
        integrate_force(drop.trace.signal, drop.quiet.weight_n, {drop.touch_down, drop.take_off + 1});
    drop.lowest = drop.take_off;
    for (std::size_t i = drop.touch_down; i <= drop.take_off; ++i) {
        const double t = static_cast<double>(i - drop.touch_down) / drop.trace.signal.rate_hz;
        const double rise = curves.rise(i) - drop.speed_down * t;
        if (-rise > drop.depth) {
            drop.depth = -rise;
            drop.lowest = i;
        }
    }
}

Result<Drop> view_drop(const inside::PreparedTrace& trace, const TraceGiven& given,
                       inside::TraceEvents& events) {
    const auto edges = place_edges(trace, events);
    if (!edges)
        return edges.refusal();
    const auto quiet = inside::weight_after(trace, given, events, {edges->landing, trace.last() + 1});
    if (!quiet)
        return quiet.refusal();
    Drop drop{trace, *quiet, trace.noise(*quiet), edges->touch_down, edges->take_off, edges->landing, 0, 0,
              0,     0};
    drop.speed_up = g * drop.flight_s() / 2;
    const double impulse = impulse_above(trace.signal, quiet->weight_n, edges->touch_down, edges->take_off);
    drop.speed_down = impulse * g / quiet->weight_n - drop.speed_up;
    if (drop.speed_down < 0.3)
        return refuse_effort(trace,
                             "By its impulse the body came down on the plate at " +
                                 format_fixed(drop.speed_down, 2) +
                                 " m/s: there was no drop, or the weight is wrong.",
                             format_fixed(drop.speed_down, 2) + " m/s", "at least 0.3 m/s, a drop of 0.5 cm");
    find_lowest(drop);
    return drop;
}

// Another take-off after the landing, before a quiet second began.
std::optional<Refusal> refuse_second_hop(const Drop& drop) {
    const auto rest = rest_after(drop.trace.signal, drop.quiet, {drop.landing, drop.trace.last() + 1});
    for (const auto& air : drop.trace.airs)
        if (air.take_off && air.landing && *air.take_off > drop.landing && (!rest || *air.take_off < *rest))
            return inside::with_corrections(
                {RefusalCode::second_hop,
                 "There is another take-off at " + format_fixed(drop.trace.signal.seconds(*air.take_off), 2) +
                     " s, before the landing came to rest: measure such a trace as repeated_hops.",
                 "vertical", format_fixed(drop.trace.signal.seconds(*air.take_off), 2) + " s",
                 "one rebound, landed and held"},
                drop.trace);
    return std::nullopt;
}

struct DropErrors {
    double grid, flight, contact, up, down, height;
};

// v_down = J / m - g t / 2: the weight's part is (v_up + v_down + g T) dW / W.
DropErrors errors_of(const Drop& drop) {
    const double grid = grid_error_s(drop.noise), two = std::sqrt(2.0) * grid, T = drop.contact_s();
    const double up = g / 2 * two, change = drop.speed_up + drop.speed_down;
    return {grid,
            two,
            two,
            up,
            root_of_squares(up, error_of_speed(drop.noise, change, T)),
            error_of_flight_height(drop.noise, drop.flight_s())};
}

void add_strength(const Drop& drop, const DropErrors& error, TraceMeasurement& into) {
    const double t = drop.flight_s(), contact = drop.contact_s(), height = g * t * t / 8;
    into.metrics.push_back(
        inside::row("reactive_strength_height", "Height over contact time", height / contact, "m/s", 3,
                    error_of_ratio(height / contact, height, error.height, contact, error.contact)));
    into.metrics.push_back(inside::row("reactive_strength_flight", "Flight time over contact time",
                                       t / contact, "1", 2,
                                       error_of_ratio(t / contact, t, error.flight, contact, error.contact)));
    into.metrics.push_back(inside::row("jump_height_flight", "Jump height from flight time", height, "m", 3,
                                       error.height, "Bent legs at landing lengthen it."));
    into.metrics.push_back(inside::row("contact_time", "Time on the plate", contact, "s", 3, error.contact));
    into.metrics.push_back(inside::row("flight_time", "Time in the air", t, "s", 3, error.flight));
    into.metrics.push_back(
        inside::row("drop_height", "Height really dropped", drop.speed_down * drop.speed_down / (2 * g), "m",
                    3, drop.speed_down / g * error.down, "From the trace, not from the box."));
    into.metrics.push_back(
        inside::row("touch_down_speed", "Speed at touch-down", drop.speed_down, "m/s", 2, error.down));
    into.metrics.push_back(
        inside::row("take_off_speed", "Take-off speed from flight time", drop.speed_up, "m/s", 2, error.up));
}

void add_forces(const Drop& drop, const DropErrors& error, TraceMeasurement& into) {
    const auto& force = drop.trace.signal.vertical;
    const double peak = *std::max_element(force.begin() + static_cast<std::ptrdiff_t>(drop.touch_down),
                                          force.begin() + static_cast<std::ptrdiff_t>(drop.take_off));
    const double mass = drop.quiet.weight_n / g;
    into.metrics.push_back(inside::row("peak_force", "Highest force of the contact", peak, "N", 0,
                                       root_of_squares(drop.noise.sample_sd_n, drop.noise.zero_error_n)));
    into.metrics.push_back(
        inside::row("depth", "Sinking of the centre of mass on the plate", drop.depth, "m", 3,
                    root_of_squares(error.down * drop.contact_s() / 2, error.grid * drop.speed_down)));
    // Momentum at the lowest point is 0, so each half of the contact holds the momentum of its end.
    into.metrics.push_back(inside::row("braking_impulse", "Impulse of braking, above body weight",
                                       mass * drop.speed_down, "N s", 1, mass * error.down));
    into.metrics.push_back(inside::row("propulsion_impulse", "Impulse of propulsion, above body weight",
                                       mass * drop.speed_up, "N s", 1, mass * error.up));
    const auto share = [&](const char* phase, std::size_t from, std::size_t to) {
        inside::add_share(drop.trace.recording, drop.trace.zero, drop.noise.sample_sd_n, phase, {from, to},
                          into);
    };
    share("braking", drop.touch_down, drop.lowest);
    share("propulsion", drop.lowest, drop.take_off);
}

// A peak in the first 60 ms with a dip of more than a tenth of it after it, and a higher or nearly as high one later.
bool heels_first(const Drop& drop) {
    const auto& force = drop.trace.signal.vertical;
    const std::size_t end = std::min(drop.touch_down + drop.trace.signal.samples_in(0.06), drop.lowest);
    std::size_t first = drop.touch_down;
    for (std::size_t i = drop.touch_down; i <= end; ++i)
        if (force[i] > force[first])
            first = i;
    double dip = force[first];
    for (std::size_t i = first; i < drop.take_off; ++i) {
        dip = std::min(dip, force[i]);
        if (dip < 0.9 * force[first] && force[i] > dip + 0.1 * force[first])
            return true;
    }
    return false;
}

void add_warnings(const Drop& drop, const TraceGiven& given, TraceMeasurement& into) {
    if (drop.contact_s() > 0.25)
        into.warnings.push_back("The contact lasted " + format_fixed(1000 * drop.contact_s(), 0) +
                                " ms; above 250 ms it is a soft landing and a jump, not a rebound.");
    if (heels_first(drop))
        into.warnings.push_back(
            "The force has an early peak of its own: the heels probably struck the plate.");
    const double height = into.metric("drop_height")->value;
    if (given.box_height_m && std::abs(height / *given.box_height_m - 1) > 0.2)
        into.warnings.push_back(
            "The body dropped from " + format_fixed(100 * height, 0) + " cm, the box is " +
            format_fixed(100 * *given.box_height_m, 0) +
            " cm high: it was stepped down from, or jumped up from. Compare by the height dropped.");
}

void add_phases(const Drop& drop, TraceMeasurement& into) {
    into.phases = {inside::phase(drop.trace, "braking", "Braking", drop.touch_down, drop.lowest),
                   inside::phase(drop.trace, "propulsion", "Propulsion", drop.lowest, drop.take_off),
                   inside::phase(drop.trace, "flight", "Flight", drop.take_off, drop.landing)};
    if (drop.quiet.span.length() > 0) {
        into.phases.push_back(
            inside::phase(drop.trace, "landing", "Landing", drop.landing, drop.quiet.span.from));
        into.phases.push_back(
            inside::phase(drop.trace, "weighing", "Weighing", drop.quiet.span.from, drop.quiet.span.to));
    }
}

} // namespace

Result<TraceMeasurement> measure_drop_jump(const ForceRecording& recording, const TraceGiven& given) {
    const auto trace = inside::prepare_trace(recording);
    if (!trace)
        return trace.refusal();
    inside::TraceEvents events(given, trace->signal);
    const auto drop = view_drop(*trace, given, events);
    if (!drop)
        return drop.refusal();
    if (auto refusal = refuse_second_hop(*drop))
        return *refusal;
    events.show("lowest", "Lowest point", drop->lowest);
    auto placed = events.finish();
    if (!placed)
        return placed.refusal();
    TraceMeasurement measured = inside::begin_measurement(*trace, given, drop->quiet);
    measured.events = std::move(placed).value();
    add_phases(*drop, measured);
    const DropErrors error = errors_of(*drop);
    add_strength(*drop, error, measured);
    add_forces(*drop, error, measured);
    add_warnings(*drop, given, measured);
    measured.sources = {"Pmc9750644", "McMahon2021"};
    return measured;
}

} // namespace amentum
