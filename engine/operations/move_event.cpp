#include "operations/move_event.h"

#include "operations/inside/efforts.h"
#include "operations/inside/entry_fields.h"
#include "operations/inside/trace_answer.h"
#include "operations/inside/trace_lookup.h"

#include <algorithm>

namespace amentum {
namespace {

Result<Done> check_event(const TraceMeasurement& measured, const std::string& event) {
    std::vector<std::string> movable;
    for (const auto& each : measured.events)
        if (each.movable)
            movable.push_back(each.key);
    if (std::find(movable.begin(), movable.end(), event) != movable.end())
        return Done{};
    return refuse_choice("event", event, movable);
}

} // namespace

Result<TraceAnswer> move_event(Workplace& workplace, const MoveEventRequest& request) {
    auto& inside = workplace.inside();
    const std::lock_guard writing(inside.writing);
    auto held = trace_named(inside, request.trace);
    if (!held)
        return held.refusal();
    if (const auto sound = check_move({request.event, request.time_s, request.reason}, ""); !sound)
        return sound.refusal();
    KeptTrace moved = std::move(held->trace);
    const auto before = measure_trace(moved.recording, given_of(moved));
    if (before)
        if (const auto known = check_event(*before, trimmed(request.event)); !known)
            return known.refusal();
    moved.moves.push_back({trimmed(request.event), request.time_s, trimmed(request.reason), inside.today()});
    const auto after = measure_trace(moved.recording, given_of(moved));
    if (!after)
        return after.refusal();
    inside.store.save_event_move(moved, readings_of_trace(moved, *after));
    return trace_answer(moved, after, held->athlete, false, inside.tables, inside.facility());
}

} // namespace amentum
