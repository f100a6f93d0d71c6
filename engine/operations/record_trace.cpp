#include "operations/record_trace.h"

#include "operations/inside/efforts.h"
#include "operations/inside/entry_fields.h"
#include "operations/inside/trace_answer.h"
#include "records/limits.h"

#include <algorithm>

namespace amentum {
namespace {

Result<Done> check_key(const std::string& key) {
    const bool fit =
        key.size() >= 8 && key.size() <= 64 && std::all_of(key.begin(), key.end(), [](char c) {
            return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || c == '-';
        });
    if (fit)
        return Done{};
    return Refusal{RefusalCode::wrong_type, "The key \"" + key + "\" is not 8 to 64 letters, digits or '-'.",
                   "key", key, "8 to 64 letters, digits or '-'"};
}

// Looked up among the athletes alone: a folder of traces must not make the whole facility be measured for each file.
Result<Athlete> athlete_among(const std::vector<Athlete>& athletes, const std::string& name) {
    std::vector<std::string> names;
    for (const auto& athlete : athletes) {
        if (athlete.id.text == name || slug(athlete.name) == slug(name))
            return athlete;
        names.push_back(athlete.name);
    }
    return refuse_unknown("athlete", name, names);
}

int next_trial(const std::vector<KeptTrace>& held, const KeptTrace& like) {
    int trial = 1;
    for (const auto& each : held)
        if (each.date == like.date && each.effort == like.effort && each.legs == like.legs)
            trial = std::max(trial, each.trial + 1);
    return trial;
}

Result<Done> check_saved(TraceSaved saved, const KeptTrace& trace) {
    const std::string of_day = trace.effort + ", " + trace.legs + ", " + trace.date.text() + ", trial " +
                               std::to_string(trace.trial);
    switch (saved) {
    case TraceSaved::added:
    case TraceSaved::held_before:
        return Done{};
    case TraceSaved::other_content:
        return Refusal{RefusalCode::already_held, "The key " + trace.id + " is held with another trace.",
                       "key", trace.id, "a key of its own"};
    case TraceSaved::trial_taken:
        return Refusal{RefusalCode::already_held, "Another trace is held as " + of_day + ".", "trial",
                       std::to_string(trace.trial), "another trial, or left out for the next one"};
    case TraceSaved::reading_taken:
        return Refusal{RefusalCode::already_held,
                       "A reading typed by hand is held where this trace's would stand (" + of_day + ").",
                       "trial", std::to_string(trace.trial), "another trial"};
    }
    return Done{};
}

// The same file as the same effort of the same athlete and day is the same trace, on any machine.
std::string key_made(const RecordTraceRequest& request, const GivenFile& file, const Athlete& athlete,
                     Date date) {
    const std::string about =
        athlete.id.text + "\n" + date.text() + "\n" + request.effort + "\n" + request.legs.value_or("");
    return "file-" + file.digest + "-" + digest_of(about);
}

KeptTrace kept_trace(const RecordTraceRequest& request, const TraceSettings& settings, ReadTrace read,
                     const Athlete& athlete, Date date) {
    KeptTrace trace{request.key.value_or(key_made(request, read.file, athlete, date)),
                    athlete.id,
                    date,
                    word(settings.trace.test),
                    word(settings.trace.legs),
                    request.trial.value_or(0),
                    read.file.name,
                    read.file.bytes,
                    read.file.digest,
                    {},
                    {},
                    trimmed(request.device.value_or("")),
                    request.note.value_or(""),
                    std::move(read.recording),
                    settings.moves};
    if (settings.trace.body_mass_kg)
        trace.body_mass = Mass::kilograms(*settings.trace.body_mass_kg);
    if (settings.trace.box_height_m)
        trace.box_height = Length::metres(*settings.trace.box_height_m);
    return trace;
}

} // namespace

Result<RecordTraceAnswer> record_trace(Workplace& workplace, const RecordTraceRequest& request) {
    auto& inside = workplace.inside();
    if (request.key)
        if (const auto key = check_key(*request.key); !key)
            return key.refusal();
    const auto athlete = athlete_among(inside.store.list_athletes(), request.athlete);
    if (!athlete)
        return athlete.refusal();
    const auto date = day_up_to_today(request.date, "trace", inside.today());
    if (!date)
        return date.refusal();
    if (request.trial && (*request.trial < limits::trial.low || *request.trial > limits::trial.high))
        return refuse_range("trial", *request.trial, limits::trial.low, limits::trial.high, "");
    const auto settings = trace_settings(request, inside.today());
    if (!settings)
        return settings.refusal();
    auto read = read_trace(inside, request, settings->recording);
    if (!read)
        return read.refusal();
    const auto measured = measure_trace(read->recording, settings->trace);
    if (!measured)
        return measured.refusal();

    KeptTrace trace = kept_trace(request, *settings, *std::move(read), *athlete, *date);
    const std::lock_guard writing(inside.writing); // reading and measuring went on beside other writers
    if (const auto held = inside.store.load_trace(trace.id))
        trace.trial = held->trial;
    else if (!request.trial)
        trace.trial = next_trial(inside.store.list_traces(athlete->id), trace);
    if (trace.trial > limits::trial.high)
        return refuse_range("trial", trace.trial, limits::trial.low, limits::trial.high, "",
                            "The day is full.");
    const auto saved = inside.store.save_trace(trace, readings_of_trace(trace, *measured));
    if (const auto sound = check_saved(saved, trace); !sound)
        return sound.refusal();
    const bool held_before = saved == TraceSaved::held_before;
    RecordTraceAnswer answer{!held_before, held_before, trace.id, trace.trial, {}, {}};
    answer.measured = shown_trace(
        {trace.recording, settings->trace, measured, trace.moves, request.samples.value_or(false)},
        inside.tables, inside.facility());
    answer.words = words_of_trace(answer.measured);
    answer.words.insert(answer.words.begin(), held_before
                                                  ? "The very same trace is already held."
                                                  : "Kept as trial " + std::to_string(trace.trial) + ".");
    return answer;
}

} // namespace amentum
