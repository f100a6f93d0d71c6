#include "force_traces/measure_bound.h"

#include "force_traces/inside/jump_view.h"
#include "values/shortest_decimal.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace amentum {
namespace {

using inside::JumpView;
using inside::row;

constexpr double g = gravity_at_plate;
constexpr double slowest_sideways = 0.3, slowest_upward = 0.1;

struct Sideways {
    double speed; // without its sign
    double error;
    double peak_n;
    double impulse;
};

std::optional<Sideways> sideways_of(const JumpView& view) {
    const auto& side = view.trace.signal.lateral;
    if (side.empty())
        return std::nullopt;
    const SampleSpan quiet = view.quiet.span;
    double sum = 0, steps = 0;
    for (std::size_t i = quiet.from; i < quiet.to; ++i)
        sum += side[i];
    for (std::size_t i = quiet.from + 1; i < quiet.to; ++i)
        steps += (side[i] - side[i - 1]) * (side[i] - side[i - 1]);
    const double n = static_cast<double>(quiet.length()), zero = sum / n;
    double off = 0, impulse = 0, peak = 0;
    for (std::size_t i = quiet.from; i < quiet.to; ++i)
        off += (side[i] - zero) * (side[i] - zero);
    for (std::size_t i = view.start; i < view.take_off; ++i)
        impulse += (side[i] + side[i + 1] - 2 * zero) / 2 * view.noise.step_s;
    for (std::size_t i = view.start; i <= view.take_off; ++i)
        peak = std::max(peak, std::abs(side[i] - zero));
    const double t = view.to_take_off_s(), mass = view.curves.mass_kg, speed = std::abs(impulse) / mass;
    const double zero_error = std::sqrt(off / (n - 1) / n), noise = std::sqrt(steps / (n - 1) / 2);
    return Sideways{speed,
                    root_of_squares(zero_error * t / mass, noise * std::sqrt(t * view.noise.step_s) / mass,
                                    speed * view.noise.weight_error_n / view.noise.weight_n),
                    peak, std::abs(impulse)};
}

std::optional<Refusal> refuse_no_bound(const JumpView& view, const std::optional<Sideways>& side) {
    const double up = view.curves.speed(view.take_off);
    const bool still = side ? side->speed < slowest_sideways : up < slowest_upward;
    if (!still && up > 0)
        return std::nullopt;
    const std::string speeds = format_fixed(up, 2) + " m/s upward" +
                               (side ? ", " + format_fixed(side->speed, 2) + " m/s sideways" : std::string());
    return inside::with_corrections(
        {RefusalCode::not_this_effort,
         "The body left the plate at " + speeds + ": a step, or no bound to the side.", "vertical", speeds,
         "at least 0.3 m/s sideways, and upward"},
        view.trace);
}

void add_sideways(const Sideways& side, double up, double up_error, TraceMeasurement& into) {
    const double both = std::hypot(up, side.speed);
    into.metrics.push_back(
        row("take_off_speed_sideways", "Sideways speed at take-off", side.speed, "m/s", 3, side.error));
    into.metrics.push_back(row("take_off_speed_together", "Speed at take-off, upward and sideways together",
                               both, "m/s", 3,
                               root_of_squares(up * up_error, side.speed * side.error) / both));
    into.metrics.push_back(row("take_off_angle", "Direction of take-off above level",
                               std::atan2(up, side.speed) * 180 / std::numbers::pi, "deg", 1,
                               root_of_squares(side.speed * up_error, up * side.error) / (both * both) * 180 /
                                   std::numbers::pi));
    into.metrics.push_back(
        row("impulse_sideways", "Impulse to the side", side.impulse, "N s", 1, std::nullopt));
    into.metrics.push_back(
        row("peak_force_sideways", "Highest force to the side", side.peak_n, "N", 0, std::nullopt));
}

void add_metrics(const JumpView& view, const std::optional<Sideways>& side, TraceMeasurement& into) {
    const double up = view.curves.speed(view.take_off), t = view.to_take_off_s();
    const double up_error = error_of_take_off_speed(view.noise, up, t);
    if (side)
        add_sideways(*side, up, up_error, into);
    into.metrics.push_back(row("take_off_speed", "Upward speed at take-off", up, "m/s", 3, up_error));
    into.metrics.push_back(row("jump_height_impulse", "Height from take-off speed", up * up / (2 * g), "m", 3,
                               error_of_height(view.noise, up, t)));
    into.metrics.push_back(row("time_to_take_off", "Time from start to take-off", t, "s", 3,
                               root_of_squares(inside::error_of_start_s(view), grid_error_s(view.noise))));
    const auto peak = inside::highest_force(view.trace.signal, view.start, view.take_off);
    into.metrics.push_back(row("peak_force", "Highest vertical force before take-off", peak.value, "N", 0,
                               root_of_squares(view.noise.sample_sd_n, view.noise.zero_error_n)));
    into.metrics.push_back(row("net_impulse", "Impulse upward, above body weight", up * view.curves.mass_kg,
                               "N s", 1,
                               root_of_squares(error_of_net_impulse(view.noise, t),
                                               view.quiet.weight_n * grid_error_s(view.noise))));
    if (view.landing)
        into.metrics.push_back(row("flight_time", "Time in the air",
                                   view.seconds(view.take_off, *view.landing), "s", 3,
                                   std::sqrt(2.0) * grid_error_s(view.noise)));
}

void add_warnings(const JumpView& view, const std::optional<Sideways>& side, TraceMeasurement& into) {
    if (!side)
        into.warnings.push_back(
            "The file has no sideways force, so only the upward part of this bound is measured; it "
            "says little about a bound to the side. Name the sideways channel if there is one.");
    if (view.given.legs == Legs::both)
        into.warnings.push_back(
            "A side bound leaves from one leg: say which, so that left and right are kept apart.");
}

} // namespace

Result<TraceMeasurement> measure_bound(const ForceRecording& recording, const TraceGiven& given) {
    const auto trace = inside::prepare_trace(recording);
    if (!trace)
        return trace.refusal();
    inside::TraceEvents events(given, trace->signal);
    const auto view = inside::view_jump(*trace, given, events, false, false);
    if (!view)
        return view.refusal();
    const auto side = sideways_of(*view);
    if (auto refusal = refuse_no_bound(*view, side))
        return *refusal;
    auto placed = events.finish();
    if (!placed)
        return placed.refusal();
    TraceMeasurement measured = inside::begin_measurement(*trace, given, view->quiet);
    measured.events = std::move(placed).value();
    measured.phases = {inside::phase(*trace, "weighing", "Weighing", view->quiet.span.from,
                                     std::min(view->quiet.span.to, view->start)),
                       inside::phase(*trace, "propulsion", "Push", view->start, view->take_off)};
    if (view->landing)
        measured.phases.push_back(inside::phase(*trace, "flight", "Flight", view->take_off, *view->landing));
    add_metrics(*view, side, measured);
    add_warnings(*view, side, measured);
    measured.sources = {"Owen2014", "Linthorne2001"};
    return measured;
}

} // namespace amentum
