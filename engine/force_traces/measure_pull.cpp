#include "force_traces/measure_pull.h"

#include "force_traces/inside/metric_rows.h"
#include "force_traces/inside/pull_view.h"
#include "values/shortest_decimal.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace amentum {
namespace {

using inside::PullView;
using inside::row;

constexpr std::array<int, 5> times_ms{50, 100, 150, 200, 250};
constexpr double dip_worth_a_word_n = 50;
constexpr const char* rate_note =
    "Poor from day to day: retest correlations run from 0.03 to 0.96. Do not act on it alone.";

// The times that the trace reaches; a pull let go early has no number for the later ones.
std::vector<int> times_within(const PullView& view) {
    std::vector<int> within;
    for (const int t : times_ms)
        if (view.start_s + t / 1000.0 <= view.trace.signal.seconds(view.trace.last()))
            within.push_back(t);
    return within;
}

std::string ms(int t) {
    return std::to_string(t) + "ms";
}

double error_of_force(const PullView& view, double seconds) {
    return root_of_squares(view.noise.sample_sd_n, view.noise.zero_error_n,
                           view.slope_at(seconds) * view.start_error_s);
}

void add_peaks(const PullView& view, TraceMeasurement& into) {
    const double peak = view.trace.signal.vertical[view.peak];
    const double error = root_of_squares(view.noise.sample_sd_n, view.noise.zero_error_n);
    into.metrics.push_back(inside::between_days(
        row("gross_peak_force", "Highest force, body weight included", peak, "N", 0, error), 0.049,
        "Grgic2022"));
    into.metrics.push_back(row("net_peak_force", "Highest force above body weight",
                               peak - view.quiet.weight_n, "N", 0,
                               root_of_squares(error, view.noise.weight_error_n)));
    into.metrics.push_back(row("time_to_peak", "Time from start to highest force",
                               view.trace.signal.seconds(view.peak) - view.start_s, "s", 3,
                               view.start_error_s));
}

void add_forces(const PullView& view, TraceMeasurement& into) {
    for (const int t : times_within(view)) {
        const double at = view.start_s + t / 1000.0, force = view.force_at(at);
        into.metrics.push_back(row("net_force_" + ms(t),
                                   "Force above body weight after " + std::to_string(t) + " ms",
                                   force - view.quiet.weight_n, "N", 0,
                                   root_of_squares(error_of_force(view, at), view.noise.weight_error_n)));
        into.metrics.push_back(row("gross_force_" + ms(t),
                                   "Force after " + std::to_string(t) + " ms, body weight included", force,
                                   "N", 0, error_of_force(view, at)));
    }
}

void add_impulses(const PullView& view, TraceMeasurement& into) {
    for (const int t : times_within(view)) {
        const double end = view.start_s + t / 1000.0;
        const double net = view.force_at(end) - view.quiet.weight_n;
        into.metrics.push_back(
            row("impulse_" + ms(t), "Impulse above body weight in " + std::to_string(t) + " ms",
                view.net_impulse(view.start_s, end), "N s", 1,
                root_of_squares(error_of_net_impulse(view.noise, t / 1000.0), net * view.start_error_s)));
    }
}

void add_rates(const PullView& view, TraceMeasurement& into) {
    const double at_start = view.force_at(view.start_s);
    for (const int t : times_within(view)) {
        const double end = view.start_s + t / 1000.0;
        into.metrics.push_back(row(
            "rate_0_" + ms(t), "Rise of force in the first " + std::to_string(t) + " ms",
            (view.force_at(end) - at_start) / (t / 1000.0), "N/s", 0,
            root_of_squares(error_of_force(view, end), view.noise.sample_sd_n) / (t / 1000.0), rate_note));
    }
    double steepest = 0;
    const double window = 0.020, peak_s = view.trace.signal.seconds(view.peak);
    for (double at = view.start_s; at + window <= peak_s; at += view.trace.signal.step_s())
        steepest = std::max(steepest, (view.force_at(at + window) - view.force_at(at)) / window);
    into.metrics.push_back(row("peak_rate_20ms", "Steepest rise of force over 20 ms", steepest, "N/s", 0,
                               std::sqrt(2.0) * view.noise.sample_sd_n / window, rate_note));
}

void add_shares(const PullView& view, TraceMeasurement& into) {
    const std::size_t start = view.trace.signal.samples_in(view.start_s);
    const auto share = [&](const char* phase, std::size_t from, std::size_t to) {
        inside::add_share(view.trace.recording, view.trace.zero, view.noise.sample_sd_n, phase, {from, to},
                          into);
    };
    share("weighing", view.quiet.span.from, view.quiet.span.to);
    share("first_250ms", start, std::min(start + view.trace.signal.samples_in(0.25), view.trace.last()));
    share("pull", start, view.peak);
}

} // namespace

Result<TraceMeasurement> measure_pull(const ForceRecording& recording, const TraceGiven& given) {
    const auto trace = inside::prepare_trace(recording);
    if (!trace)
        return trace.refusal();
    inside::TraceEvents events(given, trace->signal);
    const auto view = inside::view_pull(*trace, given, events);
    if (!view)
        return view.refusal();
    auto placed = events.finish();
    if (!placed)
        return placed.refusal();
    TraceMeasurement measured = inside::begin_measurement(*trace, given, view->quiet);
    measured.events = std::move(placed).value();
    const double weighed_s = std::min(trace->signal.seconds(view->quiet.span.to), view->start_s);
    measured.phases = {
        {"weighing", "Weighing", trace->signal.seconds(view->quiet.span.from), weighed_s},
        {"pull", "Pull", view->start_s, trace->signal.seconds(view->peak)},
    };
    add_peaks(*view, measured);
    add_forces(*view, measured);
    add_impulses(*view, measured);
    add_rates(*view, measured);
    add_shares(*view, measured);
    if (view->dip_n > dip_worth_a_word_n && view->dip_n > 6 * view->quiet.sd_n)
        measured.warnings.push_back(
            "Just before the pull the force falls " + format_fixed(view->dip_n, 0) +
            " N below body weight; that helps the early forces. Pull from a still, tight bar.");
    measured.sources = {"DosSantos2017", "DosSantos2018", "Haff2015", "Moir2018", "Grgic2022"};
    return measured;
}

} // namespace amentum
