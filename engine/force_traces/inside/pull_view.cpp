#include "force_traces/inside/pull_view.h"

#include "values/shortest_decimal.h"

#include <algorithm>
#include <cmath>

namespace amentum::inside {
namespace {

constexpr double calm_s = 0.1;
constexpr double shortest_after_peak_s = 0.1;
constexpr double weight_share_of_peak = 0.75;
constexpr double deepest_dip_n = 200;

struct PullStart {
    double seconds;
    double dip_n;
};

Refusal refuse_effort(const PreparedTrace& trace, const std::string& sentence, const std::string& given,
                      const std::string& allowed) {
    return with_corrections({RefusalCode::not_this_effort, sentence, "vertical", given, allowed}, trace);
}

std::optional<PullStart> pull_start(const PreparedTrace& trace, const QuietStanding& quiet,
                                    std::size_t peak) {
    const auto& force = trace.signal.vertical;
    const double band = std::max(5 * quiet.sd_n, 0.001 * quiet.weight_n);
    const std::size_t row = samples_in_a_row(trace.signal.rate_hz), calm = trace.signal.samples_in(calm_s);
    std::size_t inside = calm, above = 0;
    double dip = 0;
    std::optional<PullStart> found;
    for (std::size_t i = quiet.span.to; i <= peak; ++i) {
        const double off = force[i] - quiet.weight_n;
        inside = std::abs(off) <= band ? inside + 1 : 0;
        above = off > band ? above + 1 : 0;
        if (inside >= calm) {
            found.reset();
            dip = 0;
        }
        if (!found)
            dip = std::max(dip, -off);
        if (!found && above == row) {
            const std::size_t crossing = i + 1 - row;
            const double before = force[crossing - 1] - quiet.weight_n,
                         after = force[crossing] - quiet.weight_n;
            const double part = after > before ? std::clamp((band - before) / (after - before), 0.0, 1.0) : 1;
            found = PullStart{(static_cast<double>(crossing) - 1 + part) / trace.signal.rate_hz, dip};
        }
    }
    return found;
}

Result<std::size_t> place_peak(const PreparedTrace& trace, TraceEvents& events) {
    const auto& force = trace.signal.vertical;
    const auto peak = static_cast<std::size_t>(std::max_element(force.begin(), force.end()) - force.begin());
    const auto placed = events.place("pull_peak", "Highest force", peak, 2, trace.last());
    if (!placed)
        return placed.refusal();
    const double left = trace.signal.seconds(trace.last()) - trace.signal.seconds(*placed);
    if (left < shortest_after_peak_s)
        return Refusal{RefusalCode::peak_at_end,
                       "The highest force stands " + format_fixed(1000 * left, 0) +
                           " ms before the trace ends: the pull was still rising. Record until it is let go.",
                       "vertical", format_fixed(1000 * left, 0) + " ms",
                       "at least 100 ms after the highest force"};
    return *placed;
}

// Weight is the quietest second clearly below the peak; when standing is all there is, nobody pulled.
Result<QuietStanding> place_weight(const PreparedTrace& trace, const TraceGiven& given, TraceEvents& events,
                                   std::size_t peak) {
    const double highest = weight_share_of_peak * trace.signal.vertical[peak];
    const SampleSpan before{0, peak};
    if (!quietest_second(trace.signal, before, highest) && quietest_second(trace.signal, before) &&
        given.moved_events.empty())
        return refuse_effort(
            trace,
            "The force never rises a third above what standing still shows: nobody pulled, or the "
            "trace starts within the pull.",
            format_fixed(trace.signal.vertical[peak], 0) + " N", "a pull after quiet standing");
    return place_quiet(trace, given, events, before, "the highest force", highest);
}

} // namespace

double PullView::force_at(double seconds) const {
    const auto& force = trace.signal.vertical;
    const double at = std::clamp(seconds * trace.signal.rate_hz, 0.0, static_cast<double>(trace.last()));
    const auto i = std::min(static_cast<std::size_t>(at), trace.last() - 1);
    const double part = at - static_cast<double>(i);
    return force[i] + part * (force[i + 1] - force[i]);
}

double PullView::slope_at(double seconds) const {
    const double half = std::max(0.005, trace.signal.step_s());
    return (force_at(seconds + half) - force_at(seconds - half)) / (2 * half);
}

double PullView::net_impulse(double from_s, double to_s) const {
    const double rate = trace.signal.rate_hz;
    const double first = std::ceil(from_s * rate) / rate, last = std::floor(to_s * rate) / rate;
    const auto piece = [&](double a, double b) { return (b - a) * (force_at(a) + force_at(b)) / 2; };
    double sum = piece(from_s, first) + piece(last, to_s);
    for (auto i = static_cast<std::size_t>(first * rate + 0.5);
         i < static_cast<std::size_t>(last * rate + 0.5); ++i)
        sum += (trace.signal.vertical[i] + trace.signal.vertical[i + 1]) / 2 / rate;
    return sum - quiet.weight_n * (to_s - from_s);
}

Result<PullView> view_pull(const PreparedTrace& trace, const TraceGiven& given, TraceEvents& events) {
    const auto peak = place_peak(trace, events);
    if (!peak)
        return peak.refusal();
    const auto quiet = place_weight(trace, given, events, *peak);
    if (!quiet)
        return quiet.refusal();
    const auto found = pull_start(trace, *quiet, *peak);
    if (!found && !given.moved_events.contains("pull_onset"))
        return refuse_effort(trace,
                             "No start of a pull can be found between quiet standing and the highest force.",
                             "", "a pull after quiet standing");
    if (found && found->dip_n > deepest_dip_n)
        return refuse_effort(
            trace,
            "Just before the pull the force falls " + format_fixed(found->dip_n, 0) +
                " N below body weight: the athlete dipped first. Pull from a still, tight bar.",
            format_fixed(found->dip_n, 0) + " N", "a dip of at most 200 N");
    const double automatic = found ? found->seconds : trace.signal.seconds(quiet->span.to);
    const auto start =
        events.place_seconds("pull_onset", "Start of the pull", automatic,
                             trace.signal.seconds(quiet->span.from), trace.signal.seconds(*peak));
    if (!start)
        return start.refusal();
    PullView view{trace, *quiet, trace.noise(*quiet), *start, 0, *peak, found ? found->dip_n : 0};
    const double slope = std::max(1.0, std::abs(view.slope_at(*start + 0.005)));
    view.start_error_s = root_of_squares(view.noise.sample_sd_n / slope, grid_error_s(view.noise));
    return view;
}

} // namespace amentum::inside
