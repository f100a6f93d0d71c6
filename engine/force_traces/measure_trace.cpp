#include "force_traces/measure_trace.h"

#include "force_traces/measure_bound.h"
#include "force_traces/measure_drop_jump.h"
#include "force_traces/measure_hops.h"
#include "force_traces/measure_jump.h"
#include "force_traces/measure_pull.h"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace amentum {
namespace {

constexpr double lightest_kg = 15, heaviest_kg = 250, lowest_box_m = 0.05, highest_box_m = 1.5;

std::optional<Refusal> refuse_given(const ForceRecording& recording, const TraceGiven& given) {
    if (given.body_mass_kg && !(*given.body_mass_kg >= lightest_kg && *given.body_mass_kg <= heaviest_kg))
        return refuse_range("body_mass_kg", *given.body_mass_kg, lightest_kg, heaviest_kg, "kg");
    if (given.box_height_m && !(*given.box_height_m >= lowest_box_m && *given.box_height_m <= highest_box_m))
        return refuse_range("box_height_m", *given.box_height_m, lowest_box_m, highest_box_m, "m");
    for (const auto& [key, seconds] : given.moved_events)
        if (!(seconds >= 0 && seconds <= recording.seconds()))
            return refuse_range("moved_events." + key, seconds, 0, recording.seconds(), "s",
                                "That lies outside the trace.");
    return std::nullopt;
}

Result<TraceMeasurement> measure_by_test(const ForceRecording& recording, const TraceGiven& given) {
    switch (given.test) {
    case TraceTest::countermovement_jump:
    case TraceTest::squat_jump:
        return measure_jump(recording, given);
    case TraceTest::drop_jump:
        return measure_drop_jump(recording, given);
    case TraceTest::repeated_hops:
        return measure_hops(recording, given);
    case TraceTest::isometric_pull:
        return measure_pull(recording, given);
    case TraceTest::lateral_bound:
        return measure_bound(recording, given);
    }
    assert(false);
    return refuse_missing("test", "which effort the trace shows");
}

} // namespace

Result<TraceMeasurement> measure_trace(const ForceRecording& recording, const TraceGiven& given) {
    if (auto refusal = refuse_given(recording, given))
        return *refusal;
    auto measured = measure_by_test(recording, given);
    if (measured)
        std::stable_sort(measured->phases.begin(), measured->phases.end(),
                         [](const TracePhase& a, const TracePhase& b) { return a.from_s < b.from_s; });
    return measured;
}

} // namespace amentum
