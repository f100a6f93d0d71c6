#include "force_traces/inside/weight_after.h"

#include "values/shortest_decimal.h"

namespace amentum::inside {

QuietStanding weight_by_scale(const PreparedTrace& trace, double body_mass_kg) {
    const double weight = body_mass_kg * gravity_at_plate;
    return {{0, 0}, weight, 0, trace.zero.sd_n, 0.005 * weight};
}

Result<QuietStanding> weight_after(const PreparedTrace& trace, const TraceGiven& given, TraceEvents& events,
                                   SampleSpan within) {
    const bool moved = given.moved_events.contains("quiet_from") || given.moved_events.contains("quiet_to");
    const auto found = quietest_second(trace.signal, within);
    const bool still = found && !refuse_noisy_quiet(weigh(trace.signal, *found), given.legs != Legs::both);
    if (still || moved || !given.body_mass_kg) {
        if (!found && !moved)
            return with_corrections({RefusalCode::quiet_too_short,
                                     "Nobody stands still for a second after the landing, and no body mass "
                                     "was given: weight is not known.",
                                     "body_mass_kg", "",
                                     "a second of quiet standing after the landing, or a body mass"},
                                    trace);
        return place_quiet(trace, given, events, within, "the end", std::numeric_limits<double>::infinity());
    }
    return weight_by_scale(trace, *given.body_mass_kg);
}

} // namespace amentum::inside
