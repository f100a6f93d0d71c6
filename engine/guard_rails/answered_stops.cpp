#include "guard_rails/answered_stops.h"
#include "values/letters.h"

#include <algorithm>

namespace amentum {
namespace {

constexpr int of_age = 18; // whole years: proposal of this project, no source

const StopAnswered* answer_to(const Finding& finding, const AthleteId& athlete,
                              std::span<const StopAnswered> answers, Date today) {
    for (const auto& each : answers)
        if (each.athlete == athlete && each.code == finding.code && each.date == finding.day &&
            each.recorded <= today && letters_in(each.reason) >= shortest_reason &&
            letters_in(each.coach) > 0)
            return &each;
    return nullptr;
}

} // namespace

MayAnswer who_answers_for_rest(const Athlete& athlete, Date day) {
    const bool young = whole_years(athlete.birth_date, day) < of_age || athlete.level == Level::youth ||
                       athlete.level == Level::school;
    return young ? MayAnswer::nobody : MayAnswer::coach;
}

std::vector<Finding> with_answers(std::vector<Finding> findings, const AthleteId& athlete,
                                  std::span<const StopAnswered> answers, Date today) {
    for (auto& finding : findings) {
        if (finding.severity != Severity::stops || finding.may_answer != MayAnswer::coach || !finding.day)
            continue;
        if (const auto* answer = answer_to(finding, athlete, answers, today)) {
            finding.severity = Severity::warns;
            finding.answer = AnswerKept{answer->coach, answer->reason, answer->recorded};
            finding.sentence += " " + answer->coach + " answered for it on " + answer->recorded.text() +
                                ": \"" + answer->reason + "\".";
        }
    }
    return findings;
}

} // namespace amentum
