#include "operations/record_return_plan.h"

#include "operations/inside/arm_steps.h"
#include "operations/inside/entry_fields.h"
#include "operations/inside/said_by.h"
#include "operations/inside/throwing_answer.h"

namespace amentum {
namespace {

constexpr int most_days_between = 6;
constexpr std::size_t most_steps = 200;

Result<ThrowSteps> plan_from(const RecordReturnPlanRequest& request, const FacilityView& view,
                             const AthleteId& athlete, Date today) {
    const auto clinician =
        person_given("clinician", request.clinician, "the clinician who wrote the plan, with the trade");
    if (!clinician)
        return clinician.refusal();
    const auto recorded_by = person_given("recorded_by", request.recorded_by, "the adult who enters it");
    if (!recorded_by)
        return recorded_by.refusal();
    const auto start = parse_date(request.start.value_or(today.text()), "start");
    if (!start)
        return start.refusal();
    const int between = request.days_between.value_or(1);
    if (between < 0 || between > most_days_between)
        return refuse_range("days_between", between, 0, most_days_between, "days");
    if (request.steps.size() > most_steps)
        return refuse_range("steps", static_cast<double>(request.steps.size()), 0, most_steps, "steps");
    const auto steps = steps_given(request.steps);
    if (!steps)
        return steps.refusal();
    return ThrowSteps{
        athlete, next_steps_number(view, athlete),   StepsOrigin::clinician, *clinician, *start, between,
        *steps,  trimmed(request.note.value_or("")), *recorded_by,           today};
}

} // namespace

Result<RecordReturnPlanAnswer> record_return_plan(Workplace& workplace,
                                                  const RecordReturnPlanRequest& request) {
    auto& inside = workplace.inside();
    const std::lock_guard writing(inside.writing);
    const auto view = inside.view();
    const auto found = athlete_named(*view, request.athlete);
    if (!found)
        return found.refusal();
    const auto plan = plan_from(request, *view, (*found)->id, inside.today());
    if (!plan)
        return plan.refusal();
    RecordSet more;
    more.throw_steps = {*plan};
    inside.store.save_records(more);
    const auto after = inside.view();
    const auto arm = arm_case(*after, inside.tables, *after->athlete((*found)->id.text));
    RecordReturnPlanAnswer answer{plan->number,
                                  arm_steps(arm, inside.facility(), inside.today()),
                                  {},
                                  stop_and_refer_words(inside.tables)};
    answer.words = {plan->steps.empty()
                        ? "Kept: the clinician's plan in force ends by the word of " + plan->author +
                              ", entered by " + plan->recorded_by + "."
                        : "Kept as " + plan->author + " wrote it, entered by " + plan->recorded_by + ": " +
                              std::to_string(plan->steps.size()) +
                              (plan->steps.size() == 1 ? " step." : " steps.") +
                              " It gates throwing from now on; the tool changes nothing in it."};
    return answer;
}

} // namespace amentum
