#include "force_traces/inside/jump_metrics.h"

#include "values/shortest_decimal.h"

#include <algorithm>
#include <cmath>

namespace amentum::inside {
namespace {

constexpr double g = gravity_at_plate;

void add_heights(const JumpView& view, TraceMeasurement& into) {
    const double v = view.curves.speed(view.take_off), t = view.to_take_off_s();
    // The speed's error between days is half of the height's, for height goes with its square.
    into.metrics.push_back(between_days(row("jump_height_impulse", "Jump height from take-off speed",
                                            v * v / (2 * g), "m", 3, error_of_height(view.noise, v, t)),
                                        0.058, "Pmc7039490"));
    if (view.landing) {
        const double flight = view.seconds(view.take_off, *view.landing);
        into.metrics.push_back(
            between_days(row("jump_height_flight", "Jump height from flight time", g * flight * flight / 8,
                             "m", 3, error_of_flight_height(view.noise, flight),
                             "Reads more than the height from take-off speed, for the legs land more bent "
                             "than they left."),
                         0.0398, "Pmc5377563"));
    }
    into.metrics.push_back(between_days(
        row("take_off_speed", "Take-off speed", v, "m/s", 3, error_of_take_off_speed(view.noise, v, t)),
        0.029, "Pmc7039490"));
}

void add_times(const JumpView& view, TraceMeasurement& into) {
    const double v = view.curves.speed(view.take_off), t = view.to_take_off_s(), height = v * v / (2 * g);
    const double t_error = root_of_squares(error_of_start_s(view), grid_error_s(view.noise));
    into.metrics.push_back(row("time_to_take_off", "Time from start to take-off", t, "s", 3, t_error));
    into.metrics.push_back(
        row("reactive_strength_modified", "Height from take-off speed over time to take-off", height / t,
            "m/s", 3, error_of_ratio(height / t, height, error_of_height(view.noise, v, t), t, t_error)));
    if (view.landing)
        into.metrics.push_back(row("flight_time", "Time in the air",
                                   view.seconds(view.take_off, *view.landing), "s", 3,
                                   std::sqrt(2.0) * grid_error_s(view.noise)));
}

void add_places(const JumpView& view, bool with_dip, TraceMeasurement& into) {
    const double s = view.curves.rise(view.take_off), v = view.curves.speed(view.take_off);
    const double t = view.to_take_off_s();
    into.metrics.push_back(row("take_off_rise", "Rise of the centre of mass from the start to take-off", s,
                               "m", 3,
                               root_of_squares(error_of_rise(view.noise, s, t), v * grid_error_s(view.noise)),
                               with_dip ? "" : "From the held squat."));
    if (with_dip) {
        const double low = view.curves.rise(view.lowest);
        into.metrics.push_back(row("countermovement_depth", "Depth of the dip", -low, "m", 3,
                                   error_of_rise(view.noise, low, view.seconds(view.start, view.lowest))));
    }
}

void add_powers(const JumpView& view, TraceMeasurement& into) {
    const Peak power = highest_power(view);
    const double v = view.curves.speed(power.sample), force = view.trace.signal.vertical[power.sample];
    into.metrics.push_back(row("peak_power", "Highest power", power.value, "W", 0,
                               error_of_power(view.noise, force, v, view.seconds(view.start, power.sample))));
    // The mean power of a propulsion: its mean force times the error of its mean speed, at its middle; and its length.
    const double mean = mean_power(view), length = view.seconds(view.lowest, view.take_off);
    const double mean_force = impulse_above(view.trace.signal, 0, view.lowest, view.take_off) / length;
    const double middle_s = view.seconds(view.start, view.lowest) + length / 2;
    into.metrics.push_back(
        row("mean_power", "Mean power of propulsion", mean, "W", 0,
            root_of_squares(mean_force * error_of_speed(view.noise, mean / mean_force, middle_s),
                            mean * std::sqrt(2.0) * grid_error_s(view.noise) / length)));
    const Peak peak = highest_force(view.trace.signal, view.start, view.take_off);
    into.metrics.push_back(row("peak_force", "Highest force before take-off", peak.value, "N", 0,
                               root_of_squares(view.noise.sample_sd_n, view.noise.zero_error_n)));
}

// The speed left at the lowest sample, as momentum: between two samples it is exactly nothing, and braking ends and
// propulsion begins there. Not when the event was moved elsewhere.
double momentum_at_lowest(const JumpView& view) {
    const double momentum = view.curves.mass_kg * view.curves.speed(view.lowest);
    const double one_step =
        std::abs(view.trace.signal.vertical[view.lowest] - view.quiet.weight_n) * view.trace.signal.step_s();
    return std::abs(momentum) <= one_step ? momentum : 0;
}

void add_impulses(const JumpView& view, bool with_dip, TraceMeasurement& into) {
    const double weight = view.quiet.weight_n;
    const auto above = [&](std::size_t from, std::size_t to) {
        return impulse_above(view.trace.signal, weight, from, to);
    };
    const auto error = [&](std::size_t from, std::size_t to) {
        return error_of_net_impulse(view.noise, view.seconds(from, to));
    };
    const double left = with_dip ? momentum_at_lowest(view) : 0;
    const double grid =
        weight * grid_error_s(view.noise); // near take-off the force is nothing, so F - W is -W
    if (with_dip)
        into.metrics.push_back(row("braking_impulse", "Impulse of braking, above body weight",
                                   above(view.lowest_speed, view.lowest) - left, "N s", 1,
                                   error(view.lowest_speed, view.lowest)));
    into.metrics.push_back(row("propulsion_impulse", "Impulse of propulsion, above body weight",
                               above(view.lowest, view.take_off) + left, "N s", 1,
                               root_of_squares(error(view.lowest, view.take_off), grid)));
    into.metrics.push_back(row("net_impulse", "Impulse of the whole movement, above body weight",
                               above(view.start, view.take_off), "N s", 1,
                               root_of_squares(error(view.start, view.take_off), grid)));
}

void add_landing(const JumpView& view, bool with_dip, TraceMeasurement& into) {
    if (view.landing)
        into.metrics.push_back(row("peak_landing_force", "Highest force of the landing",
                                   highest_force(view.trace.signal, *view.landing, view.trace.last()).value,
                                   "N", 0, root_of_squares(view.noise.sample_sd_n, view.noise.zero_error_n)));
    const auto share = [&](const char* phase, std::size_t from, std::size_t to) {
        add_share(view.trace.recording, view.trace.zero, view.noise.sample_sd_n, phase, {from, to}, into);
    };
    share("weighing", view.quiet.span.from, view.quiet.span.to);
    if (with_dip)
        share("braking", view.lowest_speed, view.lowest);
    share("propulsion", view.lowest, view.take_off);
    if (view.landing)
        share("landing", *view.landing, view.rest.value_or(view.trace.last()));
}

// What the landing says about the weighing.
void warn_about_rest(const JumpView& view, TraceMeasurement& into) {
    if (!view.rest) {
        into.warnings.push_back(
            "The landing did not come to rest in this trace, so the weighing could not be checked "
            "against it.");
        return;
    }
    const std::size_t end = *view.rest + view.trace.signal.samples_in(0.5) - 1;
    const double stance =
        impulse_above(view.trace.signal, 0, *view.rest, end) / view.seconds(*view.rest, end);
    const double off = stance / view.quiet.weight_n - 1;
    if (std::abs(off) > 0.02)
        into.warnings.push_back("Standing after the landing weighs " + format_fixed(100 * std::abs(off), 1) +
                                " % " + (off > 0 ? "more" : "less") +
                                " than before the jump: the weighing, or the plate, wandered.");
    const double speed = view.curves.speed(end);
    if (std::abs(speed) > 0.1)
        into.warnings.push_back("At the end of the landing, standing still, the summed speed is " +
                                format_fixed(speed, 2) +
                                " m/s instead of 0: weight or start is off, and with it height and power.");
}

} // namespace

void add_jump_metrics(const JumpView& view, bool with_dip, TraceMeasurement& into) {
    add_heights(view, into);
    add_times(view, into);
    add_powers(view, into);
    add_places(view, with_dip, into);
    add_impulses(view, with_dip, into);
    add_landing(view, with_dip, into);
}

void add_jump_warnings(const JumpView& view, bool with_dip, TraceMeasurement& into) {
    const auto* flight = into.metric("jump_height_flight");
    const auto* impulse = into.metric("jump_height_impulse");
    if (!flight)
        into.warnings.push_back(
            "The landing is not in the trace: no flight time, and the weighing could not be "
            "checked against the stance after it.");
    else if (flight->value - impulse->value > 0.05)
        into.warnings.push_back(
            "Flight time says " + format_fixed(100 * (flight->value - impulse->value), 1) +
            " cm more than take-off speed: the legs were bent at landing, or the weighing is off.");
    if (view.rise_first && with_dip)
        into.warnings.push_back("The movement starts with a rise before the dip; its time counts.");
    if (view.landing)
        warn_about_rest(view, into);
}

} // namespace amentum::inside
