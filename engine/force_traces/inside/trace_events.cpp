#include "force_traces/inside/trace_events.h"

#include "values/shortest_decimal.h"

#include <algorithm>

namespace amentum::inside {

Result<double> TraceEvents::place_seconds(const std::string& key, const std::string& name, double automatic_s,
                                          double low_s, double high_s) {
    const auto moved = given_.moved_events.find(key);
    const bool is_moved = moved != given_.moved_events.end();
    const double used = is_moved ? moved->second : automatic_s;
    if (is_moved)
        last_moved_ = key;
    const bool fits = used >= low_s - 1e-9 && used <= high_s + 1e-9;
    if (!fits && !last_moved_.empty()) {
        const double blamed = given_.moved_events.at(last_moved_);
        const std::string allowed = "moved so that events keep their order";
        return Refusal{RefusalCode::out_of_range,
                       is_moved ? "The event \"" + name + "\" was moved to " + format_shortest(used) +
                                      " s; here it must lie from " + format_fixed(low_s, 3) + " to " +
                                      format_fixed(high_s, 3) + " s, between its neighbours and in the trace."
                                : "With \"" + last_moved_ + "\" moved to " + format_shortest(blamed) +
                                      " s, the event \"" + name + "\" is no longer in its order.",
                       "moved_events." + last_moved_, format_shortest(blamed),
                       is_moved ? format_fixed(low_s, 3) + " to " + format_fixed(high_s, 3) : allowed};
    }
    events_.push_back({key, name, automatic_s, used, true});
    return used;
}

Result<std::size_t> TraceEvents::place(const std::string& key, const std::string& name, std::size_t automatic,
                                       std::size_t low, std::size_t high) {
    const auto used =
        place_seconds(key, name, signal_.seconds(automatic), signal_.seconds(low), signal_.seconds(high));
    if (!used)
        return used.refusal();
    const std::size_t sample = signal_.samples_in(std::max(0.0, *used));
    events_.back().used_s = signal_.seconds(sample);
    return sample;
}

void TraceEvents::show(const std::string& key, const std::string& name, std::size_t sample) {
    events_.push_back({key, name, signal_.seconds(sample), signal_.seconds(sample), false});
}

Result<std::vector<TraceEvent>> TraceEvents::finish() const {
    std::vector<std::string> movable;
    for (const auto& event : events_)
        if (event.movable)
            movable.push_back(event.key);
    for (const auto& [key, seconds] : given_.moved_events)
        if (std::find(movable.begin(), movable.end(), key) == movable.end()) {
            Refusal refusal = refuse_unknown("event", key, movable);
            refusal.sentence = "No event \"" + key + "\" of this effort can be moved; those that can are " +
                               refusal.allowed + ".";
            refusal.field = "moved_events." + key;
            return refusal;
        }
    std::vector<TraceEvent> events = events_;
    std::stable_sort(events.begin(), events.end(),
                     [](const TraceEvent& a, const TraceEvent& b) { return a.used_s < b.used_s; });
    return events;
}

} // namespace amentum::inside
