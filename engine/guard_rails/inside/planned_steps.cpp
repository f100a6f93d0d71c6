#include "guard_rails/answered_stops.h"
#include "guard_rails/inside/pain_words.h"
#include "guard_rails/inside/planned_rules.h"
#include "throwing_workload/throw_ramp.h"

#include <algorithm>

namespace amentum {
namespace {

const std::string gate_rule =
    "A step is passed pain-free during it and on the next day; only then comes the next one.";
const std::string gate_source = "Pmc10547089";

StepProgress progress_of(const ThrowingCase& arm, const ThrowSteps& steps) {
    const ThrowLog log = throw_log(arm);
    std::vector<PainEntry> pains;
    for (const auto& pain : arm.care.pains)
        if (pain.athlete == arm.athlete.id && pain_blocks_throwing(arm.care, pain))
            pains.push_back(pain);
    std::vector<PainClearance> clearances;
    for (const auto& each : arm.care.clearances)
        if (each.athlete == arm.athlete.id)
            clearances.push_back(each);
    return measure_steps(steps, {log.entries, pains, clearances}, arm.today);
}

bool goes_on(const StepProgress& progress) {
    return progress.gate != StepGate::through && progress.gate != StepGate::ended;
}

std::string whose(const ThrowSteps& steps) {
    return steps.origin == StepsOrigin::clinician ? "the plan of " + steps.author
                                                  : "the ramp of " + steps.author;
}

class PlannedSteps {
public:
    PlannedSteps(const ThrowingCase& arm, const StepsAhead& ahead, std::span<const CalendarEntry> calendar)
        : arm_(arm), ahead_(ahead), calendar_(calendar), progress_(progress_of(arm, ahead.steps)) {}

    std::vector<Finding> all() {
        const PlannedThrowStep* before = nullptr;
        std::size_t expected = progress_.step;
        for (const auto& each : ahead_.planned) {
            if (each.date < arm_.today)
                continue;
            check(each, before, expected);
            before = &each;
            expected = std::max(expected, each.step + 1);
        }
        return std::move(findings_);
    }

private:
    void check(const PlannedThrowStep& each, const PlannedThrowStep* before, std::size_t expected) {
        for (auto& pain : pain_stops(arm_, each.date))
            findings_.push_back(std::move(pain));
        if (is_off(each.date))
            add(each, "throws_on_day_off", "falls on a day off", "No throws on days off.",
                "common practice, no source", "Move it to the next free day.");
        const bool closed = !progress_.earliest;
        if (goes_on(progress_) && (closed || each.date < *progress_.earliest))
            add(each, "step_before_gate",
                closed ? "is planned while the gate is closed"
                       : "comes before " + progress_.earliest->text() + ", the earliest day of the next step",
                gate_rule, gate_source, progress_.words);
        if (goes_on(progress_) && each.step > expected)
            add(each, "step_skipped", "skips step " + std::to_string(expected + 1), gate_rule, gate_source,
                "Plan step " + std::to_string(expected + 1) + " first.");
        if (!before)
            return;
        const int between = days_between_after(ahead_.steps, before->step);
        if (each.date - before->date <= between)
            add(each, "step_too_soon",
                "comes " + std::to_string(each.date - before->date) +
                    (each.date - before->date == 1 ? " day" : " days") + " after the step before",
                std::to_string(between) + (between == 1 ? " day" : " days") +
                    " without throwing between two steps.",
                "as " + whose(ahead_.steps) + " says",
                "Move it to " + (before->date + between + 1).text() + " or later.");
    }

    bool is_off(Date day) const {
        return std::any_of(calendar_.begin(), calendar_.end(), [&](const CalendarEntry& entry) {
            return entry.athlete == arm_.athlete.id && entry.kind == DayKind::off && entry.date <= day &&
                   day <= entry.last_date;
        });
    }

    void add(const PlannedThrowStep& each, std::string code, const std::string& what, std::string rule,
             std::string source, std::string what_to_do) {
        const bool clinician = ahead_.steps.origin == StepsOrigin::clinician;
        findings_.push_back({Severity::stops,
                             std::move(code),
                             "Step " + std::to_string(each.step + 1) + " of " + whose(ahead_.steps) +
                                 ", on " + each.date.text() + ", " + what + ".",
                             std::move(rule),
                             std::move(source),
                             std::move(what_to_do),
                             {},
                             each.date,
                             clinician ? MayAnswer::nobody : who_answers_for_rest(arm_.athlete, each.date)});
    }

    const ThrowingCase& arm_;
    const StepsAhead& ahead_;
    std::span<const CalendarEntry> calendar_;
    StepProgress progress_;
    std::vector<Finding> findings_;
};

} // namespace

std::vector<Finding> steps_before_games(const ThrowingCase& arm, std::span<const StepsAhead> steps,
                                        Date day) {
    std::vector<Finding> findings;
    for (const auto& each : steps) {
        if (!goes_on(progress_of(arm, each.steps)))
            continue;
        const bool clinician = each.steps.origin == StepsOrigin::clinician;
        findings.push_back(
            {clinician ? Severity::stops : Severity::warns,
             "steps_not_through",
             "The game of " + day.text() + " is planned before " + whose(each.steps) + " is through.",
             "Games come after the last step back to throwing.",
             gate_source,
             clinician ? "Plan another pitcher, and ask " + each.steps.author + "."
                       : "Finish the ramp first, or plan another pitcher.",
             {},
             day});
    }
    return findings;
}

std::vector<Finding> check_steps_ahead(const ThrowingCase& arm, const StepsAhead& ahead,
                                       std::span<const CalendarEntry> calendar) {
    return PlannedSteps(arm, ahead, calendar).all();
}

} // namespace amentum
