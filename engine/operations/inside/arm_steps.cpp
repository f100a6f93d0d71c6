#include "operations/inside/arm_steps.h"

#include "throwing_workload/step_progress.h"

#include <algorithm>

namespace amentum {
namespace {

constexpr double feet_in_metre = 1 / 0.3048;

StepProgress progress_of(const ArmCase& arm, const ThrowSteps& steps, Date today) {
    return measure_steps(steps, {arm.entries, arm.pains_that_stop_throwing, arm.clearances}, today);
}

Result<ThrowStep> step_given(const RampStep& given, const std::string& mark) {
    if (given.throws < 1 || given.throws > 400)
        return refuse_range(mark + "throws", given.throws, 1, 400, "throws");
    if (given.distance_ft && given.distance_m)
        return Refusal{RefusalCode::two_units, "One distance in two units.", mark + "distance_ft", "",
                       "one of them"};
    if (given.distance_ft && !(*given.distance_ft >= 1 && *given.distance_ft <= 500))
        return refuse_range(mark + "distance_ft", *given.distance_ft, 1, 500, "ft");
    if (given.distance_m && !(*given.distance_m >= 0.3 && *given.distance_m <= 150))
        return refuse_range(mark + "distance_m", *given.distance_m, 0.3, 150, "m");
    if (given.effort_percent && !(*given.effort_percent >= 10 && *given.effort_percent <= 100))
        return refuse_range(mark + "effort_percent", *given.effort_percent, 10, 100, "%");
    ThrowStep step{given.throws, {}, {}, given.words.value_or("")};
    if (given.distance_m)
        step.distance = Length::metres(*given.distance_m);
    if (given.distance_ft)
        step.distance = Length::feet(*given.distance_ft);
    if (given.effort_percent)
        step.effort = *given.effort_percent / 100;
    return step;
}

} // namespace

std::vector<ThrowSteps> steps_in_force(const std::vector<ThrowSteps>& all) {
    std::vector<ThrowSteps> in_force;
    for (const auto origin : {StepsOrigin::clinician, StepsOrigin::ramp}) {
        const ThrowSteps* last = nullptr;
        for (const auto& each : all)
            if (each.origin == origin && (!last || each.number > last->number))
                last = &each;
        if (last && !last->steps.empty())
            in_force.push_back(*last);
    }
    return in_force;
}

std::vector<ArmSteps> arm_steps(const ArmCase& arm, const Facility& facility, Date today) {
    std::vector<ArmSteps> shown;
    for (const auto& steps : steps_in_force(arm.steps)) {
        const auto progress = progress_of(arm, steps, today);
        const bool through = progress.gate == StepGate::through;
        ArmSteps line{steps.number,
                      word(steps.origin),
                      steps.author,
                      through ? 0 : static_cast<int>(progress.step) + 1,
                      static_cast<int>(steps.steps.size()),
                      progress.gate == StepGate::open,
                      progress.earliest ? progress.earliest->text() : "",
                      progress.words,
                      steps.start.text(),
                      steps.days_between,
                      steps.recorded_by,
                      steps.note,
                      {}};
        for (const auto& step : steps.steps)
            line.list.push_back(shown_step(step, std::nullopt, facility));
        shown.push_back(std::move(line));
    }
    return shown;
}

std::optional<std::string> plan_not_through(const ArmCase& arm, Date today) {
    for (const auto& steps : steps_in_force(arm.steps)) {
        if (steps.origin != StepsOrigin::clinician)
            continue;
        const auto progress = progress_of(arm, steps, today);
        if (progress.gate != StepGate::through)
            return "No: the plan of " + steps.author + " is not through (step " +
                   std::to_string(progress.step + 1) + " of " + std::to_string(steps.steps.size()) + "). " +
                   progress.words;
    }
    return std::nullopt;
}

Result<std::vector<ThrowStep>> steps_given(const std::vector<RampStep>& given) {
    std::vector<ThrowStep> steps;
    for (std::size_t i = 0; i < given.size(); ++i) {
        const auto step = step_given(given[i], "steps[" + std::to_string(i) + "].");
        if (!step)
            return step.refusal();
        steps.push_back(*step);
    }
    return steps;
}

RampStep shown_step(const ThrowStep& step, const std::optional<Date>& date, const Facility& facility) {
    RampStep shown{date ? std::optional(date->text()) : std::nullopt, step.throws, {}, {}, {}, {}};
    if (step.distance && facility.length_unit == LengthUnit::inches)
        shown.distance_ft = step.distance->metres() * feet_in_metre;
    else if (step.distance)
        shown.distance_m = step.distance->metres();
    if (step.effort)
        shown.effort_percent = 100 * *step.effort;
    if (!step.words.empty())
        shown.words = step.words;
    return shown;
}

int next_steps_number(const FacilityView& view, const AthleteId& athlete) {
    int last = 0;
    for (const auto& each : view.records.throw_steps)
        if (each.athlete == athlete)
            last = std::max(last, each.number);
    return last + 1;
}

} // namespace amentum
