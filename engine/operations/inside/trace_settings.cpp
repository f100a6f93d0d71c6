#include "operations/inside/entry_fields.h"
#include "operations/inside/trace_answer.h"
#include "recordings/read_recording.h"
#include "records/limits.h"
#include "values/letters.h"

namespace amentum {
namespace {

Result<RecordingGiven> recording_given(const MeasureTraceRequest& request) {
    RecordingGiven given{request.rate_hz,          {},
                         request.newtons_per_volt, request.vertical,
                         request.lateral,          request.left_foot_on_second.value_or(false)};
    if (given.rate_hz && (*given.rate_hz < lowest_rate_hz || *given.rate_hz > highest_rate_hz))
        return refuse_range("rate_hz", *given.rate_hz, lowest_rate_hz, highest_rate_hz, "Hz");
    if (request.unit) {
        given.unit = from_word<ForceUnit>(*request.unit);
        if (!given.unit)
            return refuse_choice("unit", *request.unit, all_words<ForceUnit>());
    }
    return given;
}

Result<TraceGiven> trace_given(const MeasureTraceRequest& request) {
    const auto effort = from_word<TraceTest>(request.effort);
    if (!effort)
        return refuse_choice("effort", request.effort, all_words<TraceTest>());
    TraceGiven given{*effort, Legs::both, {}, {}, {}};
    if (request.legs) {
        const auto legs = from_word<Legs>(*request.legs);
        if (!legs)
            return refuse_choice("legs", *request.legs, all_words<Legs>());
        given.legs = *legs;
    }
    const auto mass = mass_given("body_mass", request.body_mass_kg, request.body_mass_lb);
    if (!mass)
        return mass.refusal();
    if (*mass) {
        const double kg = (*mass)->kilograms();
        if (kg < limits::body_mass_kg.low || kg > limits::body_mass_kg.high)
            return refuse_range("body_mass", kg, limits::body_mass_kg.low, limits::body_mass_kg.high, "kg");
        given.body_mass_kg = kg;
    }
    using MaybeLength = std::optional<Length>;
    const auto box = length_given(
        "box_height",
        request.box_height_cm ? MaybeLength(Length::centimetres(*request.box_height_cm)) : std::nullopt,
        request.box_height_in ? MaybeLength(Length::inches(*request.box_height_in)) : std::nullopt);
    if (!box)
        return box.refusal();
    if (*box) {
        given.box_height_m = (*box)->metres();
        if (*given.box_height_m < 0.05 || *given.box_height_m > 1.2)
            return refuse_range("box_height", *given.box_height_m, 0.05, 1.2, "m");
    }
    return given;
}

} // namespace

Result<Done> check_move(const MoveGiven& move, const std::string& path) {
    if (trimmed(move.event).empty())
        return refuse_missing(path + "event", "the key of the event that is moved");
    if (letters_in(move.reason) < shortest_reason)
        return Refusal{
            RefusalCode::missing_field,
            "Moving an event needs a reason of at least ten characters; it is kept with the trace.",
            path + "reason", move.reason, "at least 10 letters"};
    return Done{};
}

Result<TraceSettings> trace_settings(const MeasureTraceRequest& request, Date today) {
    auto recording = recording_given(request);
    if (!recording)
        return recording.refusal();
    auto trace = trace_given(request);
    if (!trace)
        return trace.refusal();
    TraceSettings settings{*std::move(recording), *std::move(trace), {}};
    for (std::size_t i = 0; i < request.moves.size(); ++i) {
        const auto& move = request.moves[i];
        if (const auto sound = check_move(move, "moves." + std::to_string(i) + "."); !sound)
            return sound.refusal();
        settings.moves.push_back({trimmed(move.event), move.time_s, trimmed(move.reason), today});
    }
    settings.trace.moved_events = moved_events(settings.moves);
    return settings;
}

Result<ReadTrace> read_trace(Workplace::Inside& inside, const MeasureTraceRequest& request,
                             const RecordingGiven& given) {
    RecordingReader reader(given);
    auto file = read_given_file(inside, request.file_name, request.content,
                                [&](std::string_view piece) { return reader.take(piece); });
    if (!file)
        return file.refusal();
    auto recording = reader.finish();
    if (!recording)
        return recording.refusal();
    return ReadTrace{*std::move(file), *std::move(recording)};
}

TraceGiven given_of(const KeptTrace& trace) {
    const auto effort = from_word<TraceTest>(trace.effort);
    const auto legs = from_word<Legs>(trace.legs);
    if (!effort || !legs)
        throw StoreFailure("the store holds a trace of the unknown effort \"" + trace.effort +
                           "\" or legs \"" + trace.legs + "\"");
    TraceGiven given{*effort, *legs, {}, {}, moved_events(trace.moves)};
    if (trace.body_mass)
        given.body_mass_kg = trace.body_mass->kilograms();
    if (trace.box_height)
        given.box_height_m = trace.box_height->metres();
    return given;
}

} // namespace amentum
