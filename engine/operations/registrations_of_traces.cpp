// The operations on force traces: what a plate wrote, measured, kept, looked at again.
#include "operations/guess_trace_names.h"
#include "operations/inside/terminal_text.h"
#include "operations/inspect_c3d.h"
#include "operations/make_operation.h"
#include "operations/measure_trace.h"
#include "operations/move_event.h"
#include "operations/record_trace.h"
#include "operations/registrations.h"
#include "operations/trace.h"
#include "operations/traces.h"

namespace amentum {
namespace {

using boost::json::value;

std::string measured_words(const value& trace) {
    std::string text;
    for (const auto& note : trace.at("file_notes").as_array())
        text += paragraph("File: " + said(note));
    if (trace.at("refusal").is_object())
        return text + paragraph("REFUSED (" + number_said(trace.at("refusal").at("code"), 0) + "). " +
                                said(trace.at("refusal").at("sentence")));
    for (const auto& event : trace.at("events").as_array())
        text += "  " + padded(said(event.at("name")), 28) + number_said(event.at("used_s"), 3) + " s" +
                (event.at("moved").as_bool()
                     ? " (moved; automatic " + number_said(event.at("automatic_s"), 3) + ")"
                     : "") +
                "\n";
    std::string note;
    for (const auto& metric : trace.at("metrics").as_array()) {
        const int decimals = static_cast<int>(metric.at("decimals").to_number<double>());
        std::string line = "  " + padded(said(metric.at("name")), 54) +
                           number_said(metric.at("value"), decimals) + " " + said(metric.at("unit"));
        if (!metric.at("low").is_null())
            line += "  (" + number_said(metric.at("low"), decimals) + " to " +
                    number_said(metric.at("high"), decimals) + ")";
        else
            line += "  (" + said(metric.at("error_words")) + ")";
        text += line + "\n";
        if (said(metric.at("note")) != note &&
            !said(metric.at("note")).empty()) // once for neighbours that share it
            text += paragraph(said(metric.at("note")), 4);
        note = said(metric.at("note"));
    }
    for (const auto& sentence : trace.at("corrections").as_array())
        text += paragraph("Corrected: " + said(sentence));
    return text + list_said(trace.at("warnings"), "Note: ");
}

std::string preview_words(const value& answer) {
    return measured_words(answer.at("trace"));
}

std::string recorded_words(const value& answer) {
    const std::string first =
        answer.at("held_before").as_bool()
            ? "The very same trace is already held: "
            : "Kept as " + said(answer.at("trace")) + ", trial " + number_said(answer.at("trial"), 0) + ": ";
    const auto& measured = answer.at("measured");
    const auto& metrics = measured.at("metrics").as_array();
    if (metrics.empty())
        return paragraph(first + "no number.");
    const auto& main = metrics.front();
    return paragraph(
               first + said(main.at("name")) + " " +
               number_said(main.at("value"), static_cast<int>(main.at("decimals").to_number<double>())) +
               " " + said(main.at("unit")) + ".") +
           list_said(measured.at("warnings"), "Note: ");
}

std::string kept_words(const value& answer) {
    std::string text =
        paragraph(said(answer.at("name")) + ", " + said(answer.at("date")) + ", " +
                  said(answer.at("measured").at("effort_name")) + ", trial " +
                  number_said(answer.at("trial"), 0) + " (" + said(answer.at("file_name")) + ")");
    text += measured_words(answer.at("measured"));
    for (const auto& move : answer.at("moves").as_array())
        text += paragraph(
            "Moved on " + said(move.at("moved_on")) + ": " + said(move.at("event")) + " to " +
            (move.at("time_s").is_null() ? "its automatic time" : number_said(move.at("time_s"), 3) + " s") +
            ". " + said(move.at("reason")));
    return text;
}

std::string list_words(const value& answer) {
    std::string text = said(answer.at("name")) + "\n";
    for (const auto& group : answer.at("groups").as_array()) {
        text += said(group.at("date")) + "  " + said(group.at("effort_name")) + ", " +
                said(group.at("legs")) + "\n";
        for (const auto& trial : group.at("trials").as_array()) {
            text += "  trial " + number_said(trial.at("trial"), 0) + "  " + said(trial.at("trace")) + "  ";
            if (trial.at("refusal").is_object())
                text += "refused: " + said(trial.at("refusal").at("sentence"));
            else if (!trial.at("metrics").as_array().empty()) {
                const auto& main = trial.at("metrics").as_array().front();
                text +=
                    said(main.at("name")) + " " +
                    number_said(main.at("value"), static_cast<int>(main.at("decimals").to_number<double>())) +
                    " " + said(main.at("unit"));
            }
            text += "\n";
        }
        if (group.at("disagreement").is_object())
            text += paragraph(said(group.at("disagreement").at("sentence")), 2);
    }
    return text + list_said(answer.at("words"), "");
}

std::string guess_words(const value& answer) {
    std::string text;
    for (const auto& guess : answer.at("guesses").as_array())
        text += padded(said(guess.at("file_name")), 40) + padded(said(guess.at("athlete_name")), 20) +
                padded(said(guess.at("effort")), 24) + said(guess.at("words")) + "\n";
    return text;
}

std::string c3d_words(const value& answer) {
    std::string text = said(answer.at("file_name")) + ": " + said(answer.at("processor")) + ", " +
                       said(answer.at("storage")) + ", " + number_said(answer.at("frames"), 0) +
                       " frames at " + number_said(answer.at("frame_rate_hz"), 1) + " Hz, " +
                       number_said(answer.at("points"), 0) + " points\n";
    for (const auto& plate : answer.at("plates").as_array())
        text += "  plate " + number_said(plate.at("number"), 0) + ": type " +
                number_said(plate.at("type"), 0) + ", " + said(plate.at("words")) + "\n";
    for (const auto& channel : answer.at("channels").as_array())
        text += "  channel " + padded(number_said(channel.at("number"), 0), 4) +
                padded(said(channel.at("label")), 24) + said(channel.at("unit")) + "\n";
    for (const auto& parameter : answer.at("parameters").as_array())
        text += "  " + padded(said(parameter.at("group")) + ":" + said(parameter.at("name")), 36) +
                said(parameter.at("value")) + "\n";
    return text + list_said(answer.at("problems"), "Wrong: ") + list_said(answer.at("words"), "");
}

Meanings file_meanings() {
    return {
        {"file_name", "the file's name; in a terminal the file itself is read"},
        {"content", "the file's bytes as base64; not needed in a terminal"},
        {"effort",
         "countermovement_jump, squat_jump, drop_jump, repeated_hops, isometric_pull or lateral_bound"},
        {"legs", "both (when left out), left or right"},
        {"body_mass_kg", "from a scale, in kg; compared with the weighing on the plate"},
        {"body_mass_lb", "or in lb"},
        {"box_height_cm", "of a drop jump, in cm; shown beside the height the trace gives"},
        {"box_height_in", "or in inches"},
        {"rate_hz", "samples a second, 50 to 20000; needed when the file does not tell"},
        {"unit", "of the forces: N, kg or V; needed when the file does not tell"},
        {"newtons_per_volt", "needed with V"},
        {"vertical", "columns or plates of the vertical force, by name or number, left foot first"},
        {"lateral", "columns of the sideways force, or x or y of a C3D file's laboratory"},
        {"left_foot_on_second", "yes: the left foot stood on the second plate"},
        {"moves",
         "events put elsewhere, as JSON: [{\"event\": \"onset\", \"time_s\": 1.42, \"reason\": \"...\"}]"},
        {"samples", "yes: the samples come back too, to draw them"}};
}

Meanings kept_meanings() {
    auto meanings = file_meanings();
    meanings.insert(
        {{"key", "made on the device, 8 to 64 letters, digits or '-'; the same key is the same trace"},
         {"athlete", "the thrower's name or id"},
         {"date", "YYYY-MM-DD"},
         {"trial", "1 to 60; left out: the next one of that day"},
         {"device", "which plate: two plates are not compared"},
         {"note", "anything worth keeping"}});
    return meanings;
}

} // namespace

std::vector<Operation> trace_operations() {
    return {
        make_operation("measure_trace", "What does this force-plate file show? Nothing is kept.",
                       Effect::asks, file_meanings(),
                       static_cast<Result<MeasureTraceAnswer> (*)(Workplace&, const MeasureTraceRequest&)>(
                           &measure_trace),
                       &preview_words),
        make_operation("record_trace", "Keep a force trace whole, with the readings it gives.",
                       Effect::writes, kept_meanings(), &record_trace, &recorded_words),
        make_operation("trace", "One kept force trace: events, numbers, and each move of an event.",
                       Effect::reads,
                       {{"trace", "the trace's id"}, {"samples", "yes: with the samples, to draw them"}},
                       &trace, &kept_words),
        make_operation("move_event",
                       "Put an event of a kept trace elsewhere, with a reason; the automatic time stays.",
                       Effect::writes,
                       {{"trace", "the trace's id"},
                        {"event", "the event's key, such as onset or take_off"},
                        {"time_s", "seconds from the first sample; left out: back to the automatic time"},
                        {"reason", "at least ten characters; it is kept"}},
                       &move_event, &kept_words),
        make_operation("traces", "One thrower's force traces by day, the trials of an effort side by side.",
                       Effect::reads,
                       {{"athlete", "the thrower's name or id"},
                        {"date", "one day, YYYY-MM-DD; left out: all"},
                        {"effort", "one effort; left out: all"}},
                       &traces, &list_words),
        make_operation("guess_trace_names",
                       "Whose trace is each file, of which effort? A guess to be confirmed.", Effect::asks,
                       {{"names", "file names, with their folders"}}, &guess_trace_names, &guess_words),
        make_operation("inspect_c3d", "What stands in a C3D file: plates, channels, parameters, faults.",
                       Effect::asks,
                       {{"file_name", "the file's name; in a terminal the file itself is read"},
                        {"content", "the file's bytes as base64; not needed in a terminal"}},
                       &inspect_c3d, &c3d_words),
    };
}

} // namespace amentum
