#include "operations/guess_trace_names.h"

#include "operations/inside/inside.h"
#include "operations/inside/trace_name.h"

namespace amentum {
namespace {

std::string words_about(const TraceName& read) {
    std::string words;
    const auto add = [&](const std::string& sentence) { words += (words.empty() ? "" : " ") + sentence; };
    if (!read.athlete)
        add("No one thrower's name is in the file's name.");
    else if (!read.athlete_sure)
        add("Only a part of the thrower's name is there, or another spelling: please look.");
    if (!read.effort)
        add("The effort is not named.");
    if (!read.date)
        add("No day of the form 2026-06-01 is named.");
    return words.empty() ? "Thrower, effort and day are named." : words;
}

} // namespace

Result<GuessTraceNamesAnswer> guess_trace_names(Workplace& workplace, const GuessTraceNamesRequest& request) {
    if (request.names.empty())
        return refuse_missing("names", "at least one file name");
    const auto athletes = workplace.inside().store.list_athletes();
    GuessTraceNamesAnswer answer{};
    for (const auto& name : request.names) {
        const TraceName read = read_trace_name(name, athletes);
        answer.guesses.push_back(
            {name, read.athlete ? read.athlete->id.text : "", read.athlete ? read.athlete->name : "",
             read.effort ? word(*read.effort) : "", word(read.legs.value_or(Legs::both)),
             read.date ? read.date->text() : "", read.trial.value_or(0),
             read.athlete && read.athlete_sure && read.effort.has_value(), words_about(read)});
    }
    return answer;
}

} // namespace amentum
