#include "force_traces/inside/prepared_trace.h"

#include "values/shortest_decimal.h"

#include <algorithm>
#include <cmath>

namespace amentum::inside {
namespace {

constexpr double longest_flight_s = 1.2;
constexpr double largest_mass_difference = 0.02;

bool is_flight(const PreparedTrace& trace, const AirTime& air) {
    return air.take_off && air.landing &&
           static_cast<double>(*air.landing - *air.take_off) <= longest_flight_s * trace.signal.rate_hz;
}

void warn_about_mass(const TraceGiven& given, double weight_n, TraceMeasurement& into) {
    if (!given.body_mass_kg)
        return;
    const double weighed = weight_n / gravity_at_plate;
    if (std::abs(weighed / *given.body_mass_kg - 1) > largest_mass_difference)
        into.warnings.push_back(
            "The plates weigh " + format_fixed(weighed, 1) + " kg, the scale said " +
            format_fixed(*given.body_mass_kg, 1) +
            " kg: more than 2 % apart. Check the plates' calibration and what was worn or held.");
}

} // namespace

TraceNoise PreparedTrace::noise(const QuietStanding& quiet) const {
    return {quiet.weight_n, quiet.error_n, zero.error_n, quiet.sample_sd_n, signal.step_s()};
}

Result<PreparedTrace> prepare_trace(const ForceRecording& recording) {
    if (recording.samples() < 2)
        return Refusal{RefusalCode::too_few_data, "The trace is empty.", "vertical", "", "at least a second"};
    auto signal = sum_plates(recording);
    if (!signal)
        return signal.refusal();
    auto zero = measure_plate_zero(recording, *signal);
    if (!zero)
        return zero.refusal();
    PreparedTrace trace{recording, std::move(signal).value(), std::move(zero).value(), {}};
    subtract_zero(trace.zero, trace.signal);
    trace.airs = air_times(trace.signal, trace.zero);
    return trace;
}

Refusal with_corrections(Refusal refusal, const PreparedTrace& trace) {
    if (trace.zero.seen)
        for (const auto& words : trace.zero.corrections)
            refusal.sentence += " " + words;
    return refusal;
}

TraceMeasurement begin_measurement(const PreparedTrace& trace, const TraceGiven& given,
                                   const QuietStanding& quiet) {
    TraceMeasurement begun{given, quiet.weight_n, quiet.error_n, {}, {}, {}, trace.zero.corrections, {}, {}};
    if (const auto words = describe_rate_bias(trace.signal.rate_hz); !words.empty())
        begun.warnings.push_back(words);
    warn_about_mass(given, quiet.weight_n, begun);
    return begun;
}

Result<QuietStanding> place_quiet(const PreparedTrace& trace, const TraceGiven& given, TraceEvents& events,
                                  SampleSpan within, const std::string& before_what, double highest_mean_n) {
    const bool moved = given.moved_events.contains("quiet_from") || given.moved_events.contains("quiet_to");
    const auto found = quietest_second(trace.signal, within, highest_mean_n);
    if (!found && !moved)
        return with_corrections(
            refuse_short_quiet(static_cast<double>(within.length()) / trace.signal.rate_hz, before_what),
            trace);
    const SampleSpan automatic = found.value_or(within);
    const auto from = events.place("quiet_from", "Weighing from", automatic.from, within.from, within.to);
    if (!from)
        return from.refusal();
    const auto to = events.place("quiet_to", "Weighing to", automatic.to, *from + 2, within.to);
    if (!to)
        return to.refusal();
    if (*to - *from + 1 < trace.signal.samples_in(quiet_seconds))
        return refuse_short_quiet(static_cast<double>(*to - *from) / trace.signal.rate_hz, before_what);
    const QuietStanding quiet = weigh(trace.signal, {*from, *to});
    if (auto refusal =
            refuse_noisy_quiet(quiet, given.legs != Legs::both || given.test == TraceTest::lateral_bound))
        return with_corrections(*refusal, trace);
    return quiet;
}

Result<AirTime> jump_of(const PreparedTrace& trace, bool landing_needed) {
    const std::size_t second = trace.signal.samples_in(quiet_seconds);
    const AirTime* first = nullptr;
    for (const auto& air : trace.airs) {
        if (!is_flight(trace, air))
            continue;
        if (*air.take_off - stance_before(trace, *air.take_off) >= second)
            return air;
        first = first ? first : &air;
    }
    if (first)
        return *first;
    if (!landing_needed)
        for (const auto& air : trace.airs)
            if (air.take_off && *air.take_off - stance_before(trace, *air.take_off) >= second)
                return air;
    const double lowest = *std::min_element(trace.signal.vertical.begin(), trace.signal.vertical.end());
    return with_corrections(
        {RefusalCode::no_flight,
         "Nobody leaves the plates and lands on them again in this trace; the lowest force is " +
             format_fixed(lowest, 0) + " N. Record until a second after the landing.",
         "vertical", format_fixed(lowest, 0) + " N", "a flight of 0.08 to 1.2 s with its landing"},
        trace);
}

std::size_t stance_before(const PreparedTrace& trace, std::size_t take_off) {
    std::size_t from = 0;
    for (const auto& air : trace.airs)
        if (air.landing && *air.landing < take_off)
            from = *air.landing;
    return from;
}

TracePhase phase(const PreparedTrace& trace, const std::string& key, const std::string& name,
                 std::size_t from, std::size_t to) {
    return {key, name, trace.signal.seconds(from), trace.signal.seconds(to)};
}

} // namespace amentum::inside
