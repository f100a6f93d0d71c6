#include "force_traces/measure_hops.h"

#include "force_traces/inside/metric_rows.h"
#include "force_traces/inside/prepared_trace.h"
#include "force_traces/inside/weight_after.h"
#include "force_traces/jump_curves.h"
#include "values/shortest_decimal.h"

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

using inside::PreparedTrace;

constexpr double shortest_contact_s = 0.08, longest_contact_s = 0.6, longest_flight_s = 1.2;
constexpr std::size_t fewest_hops = 3;

struct Hop {
    std::size_t touch_down, take_off, landing;
};

std::vector<Hop> longest_chain(const PreparedTrace& trace) {
    const auto seconds = [&](std::size_t from, std::size_t to) {
        return static_cast<double>(to - from) / trace.signal.rate_hz;
    };
    std::vector<Hop> longest, chain;
    for (std::size_t i = 0; i + 1 < trace.airs.size(); ++i) {
        const auto &before = trace.airs[i], &after = trace.airs[i + 1];
        const bool whole = before.landing && after.take_off && after.landing;
        const bool hop = whole && seconds(*before.landing, *after.take_off) >= shortest_contact_s &&
                         seconds(*before.landing, *after.take_off) <= longest_contact_s &&
                         seconds(*after.take_off, *after.landing) <= longest_flight_s;
        if (!hop)
            chain.clear();
        else
            chain.push_back({*before.landing, *after.take_off, *after.landing});
        if (chain.size() > longest.size())
            longest = chain;
    }
    return longest;
}

QuietStanding weight_by_mean_force(const PreparedTrace& trace, const std::vector<Hop>& hops) {
    const std::size_t from = hops.front().touch_down, to = hops.back().landing;
    const double seconds = static_cast<double>(to - from) / trace.signal.rate_hz;
    const double weight = impulse_above(trace.signal, 0, from, to) / seconds;
    return {{0, 0}, weight, 0, trace.zero.sd_n, 0.01 * weight};
}

// Before the hops, else after, else by scale, else by the hops' own mean force.
Result<QuietStanding> weight_of(const PreparedTrace& trace, const TraceGiven& given,
                                inside::TraceEvents& events, const std::vector<Hop>& hops, bool& by_hops) {
    const SampleSpan before{0, hops.front().touch_down}, after{hops.back().landing, trace.last() + 1};
    const bool moved = given.moved_events.contains("quiet_from") || given.moved_events.contains("quiet_to");
    const auto still = [&](SampleSpan within) {
        const auto found = quietest_second(trace.signal, within);
        return found && !refuse_noisy_quiet(weigh(trace.signal, *found), given.legs != Legs::both);
    };
    const double any = std::numeric_limits<double>::infinity();
    if (still(before))
        return inside::place_quiet(trace, given, events, moved ? SampleSpan{0, trace.last()} : before,
                                   "the hops", any);
    if (still(after) || moved)
        return inside::place_quiet(trace, given, events, moved ? SampleSpan{0, trace.last()} : after,
                                   "the end", any);
    if (given.body_mass_kg)
        return inside::weight_by_scale(trace, *given.body_mass_kg);
    by_hops = true;
    return weight_by_mean_force(trace, hops);
}

struct HopSeries {
    std::vector<double> contact, flight, height, by_height, by_flight, peak;
};

HopSeries series_of(const PreparedTrace& trace, const std::vector<Hop>& hops) {
    HopSeries series;
    for (const auto& hop : hops) {
        const double contact = static_cast<double>(hop.take_off - hop.touch_down) / trace.signal.rate_hz;
        const double flight = static_cast<double>(hop.landing - hop.take_off) / trace.signal.rate_hz;
        const double height = gravity_at_plate * flight * flight / 8;
        series.contact.push_back(contact);
        series.flight.push_back(flight);
        series.height.push_back(height);
        series.by_height.push_back(height / contact);
        series.by_flight.push_back(flight / contact);
        const auto force = trace.signal.vertical.begin();
        series.peak.push_back(*std::max_element(force + static_cast<std::ptrdiff_t>(hop.touch_down),
                                                force + static_cast<std::ptrdiff_t>(hop.take_off)));
    }
    return series;
}

// The error of a mean over the hops: grid and noise of one hop over the root of their number. What one hop differs
// from the next is the spread, shown as its own number.
void add_metrics(const HopSeries& series, const TraceNoise& noise, TraceMeasurement& into) {
    const double n = static_cast<double>(series.contact.size()), two = std::sqrt(2.0) * grid_error_s(noise);
    const auto add = [&](const std::string& key, const std::string& name, const std::vector<double>& values,
                         const std::string& unit, int decimals, double error) {
        const auto mean = inside::mean_and_spread(values);
        into.metrics.push_back(
            inside::row(key, name + ", mean of the hops", mean.mean, unit, decimals, error / std::sqrt(n)));
        into.metrics.push_back(inside::row(key + "_spread", name + ", SD between hops", mean.sd, unit,
                                           decimals, mean.sd / std::sqrt(2 * (n - 1))));
    };
    const double contact = inside::mean_and_spread(series.contact).mean;
    const double flight = inside::mean_and_spread(series.flight).mean;
    const double height = inside::mean_and_spread(series.height).mean;
    const double height_error = error_of_flight_height(noise, flight);
    add("reactive_strength_height", "Height over contact time", series.by_height, "m/s", 3,
        error_of_ratio(height / contact, height, height_error, contact, two));
    add("reactive_strength_flight", "Flight time over contact time", series.by_flight, "1", 2,
        error_of_ratio(flight / contact, flight, two, contact, two));
    add("contact_time", "Time on the plate", series.contact, "s", 3, two);
    add("flight_time", "Time in the air", series.flight, "s", 3, two);
    add("jump_height_flight", "Height from flight time", series.height, "m", 3, height_error);
    add("peak_force", "Highest force of a contact", series.peak, "N", 0,
        root_of_squares(noise.sample_sd_n, noise.zero_error_n));
    into.metrics.push_back(inside::row("hop_count", "Hops counted", n, "1", 0, std::nullopt));
    const auto best = std::max_element(series.by_height.begin(), series.by_height.end());
    into.metrics.push_back(inside::row("best_reactive_strength_height", "Height over contact time, best hop",
                                       *best, "m/s", 3,
                                       error_of_ratio(*best, height, height_error, contact, two),
                                       "The best of several is partly luck; compare means."));
}

void add_warnings(const HopSeries& series, bool by_hops, TraceMeasurement& into) {
    const double contact = inside::mean_and_spread(series.contact).mean;
    if (by_hops)
        into.warnings.push_back(
            "Nobody stood still and no body mass was given: body weight is the mean force of the "
            "hops, known to about 1 %.");
    if (contact > 0.25)
        into.warnings.push_back("The contacts last " + format_fixed(1000 * contact, 0) +
                                " ms on the mean; above 250 ms they are jumps, not rebounds.");
    const std::size_t third = std::max<std::size_t>(1, series.height.size() / 3);
    const auto mean_of = [](auto from, auto to) {
        return inside::mean_and_spread(std::vector<double>(from, to)).mean;
    };
    const double first =
        mean_of(series.height.begin(), series.height.begin() + static_cast<std::ptrdiff_t>(third));
    const double last =
        mean_of(series.height.end() - static_cast<std::ptrdiff_t>(third), series.height.end());
    if (last < 0.8 * first)
        into.warnings.push_back("The hops get lower: the last third reaches " +
                                format_fixed(100 * last / first, 0) + " % of the first.");
}

void add_shares(const PreparedTrace& trace, const std::vector<Hop>& hops, double sample_sd,
                TraceMeasurement& into) {
    inside::add_share(trace.recording, trace.zero, sample_sd, "hops",
                      {hops.front().touch_down, hops.back().take_off}, into);
}

void show_hops(const PreparedTrace& trace, const std::vector<Hop>& hops, inside::TraceEvents& events,
               std::vector<TracePhase>& phases) {
    for (std::size_t i = 0; i < hops.size(); ++i) {
        const std::string number = std::to_string(i + 1);
        events.show("touch_down_" + number, "Touch-down " + number, hops[i].touch_down);
        events.show("take_off_" + number, "Take-off " + number, hops[i].take_off);
        phases.push_back(
            inside::phase(trace, "contact", "Contact " + number, hops[i].touch_down, hops[i].take_off));
        phases.push_back(
            inside::phase(trace, "flight", "Flight " + number, hops[i].take_off, hops[i].landing));
    }
    events.show("landing", "Last landing", hops.back().landing);
}

} // namespace

Result<TraceMeasurement> measure_hops(const ForceRecording& recording, const TraceGiven& given) {
    const auto trace = inside::prepare_trace(recording);
    if (!trace)
        return trace.refusal();
    if (const auto flight = inside::jump_of(*trace, true); !flight)
        return flight.refusal();
    const auto hops = longest_chain(*trace);
    if (hops.size() < fewest_hops)
        return inside::with_corrections(
            {RefusalCode::too_few_data,
             "The trace shows " + std::to_string(hops.size()) +
                 " hops in a row (contact of 0.08 to 0.6 s and the flight after it); three "
                 "are needed.",
             "vertical", std::to_string(hops.size()), "at least 3 hops in a row"},
            *trace);
    inside::TraceEvents events(given, trace->signal);
    bool by_hops = false;
    const auto quiet = weight_of(*trace, given, events, hops, by_hops);
    if (!quiet)
        return quiet.refusal();
    TraceMeasurement measured = inside::begin_measurement(*trace, given, *quiet);
    show_hops(*trace, hops, events, measured.phases);
    auto placed = events.finish();
    if (!placed)
        return placed.refusal();
    measured.events = std::move(placed).value();
    const HopSeries series = series_of(*trace, hops);
    add_metrics(series, trace->noise(*quiet), measured);
    add_shares(*trace, hops, quiet->sample_sd_n, measured);
    add_warnings(series, by_hops, measured);
    measured.sources = {"Pmc9750644"};
    return measured;
}

} // namespace amentum
