#include "operations/plan_ramp.h"

#include "operations/inside/arm_steps.h"
#include "operations/inside/entry_fields.h"
#include "operations/inside/said_by.h"
#include "operations/inside/shown_pains.h"
#include "operations/inside/throwing_answer.h"
#include "throwing_workload/open_pains.h"
#include "throwing_workload/throw_ramp.h"

#include <algorithm>

namespace amentum {
namespace {

Result<ThrowRampWanted> ramp_wanted(const PlanRampRequest& request, const ArmCase& arm, Date today) {
    const auto start = parse_date(request.start.value_or((today + 1).text()), "start");
    if (!start)
        return start.refusal();
    if (*start < today)
        return Refusal{RefusalCode::out_of_range, "A ramp begins today or later.", "start", start->text(),
                       "from " + today.text()};
    if (!request.target_week && !request.end.value_or(false))
        return refuse_missing("target_week", "the throws of the week the ramp leads to");
    ThrowRampWanted wanted{request.target_week.value_or(0), *start};
    wanted.start_throws = request.week_before.value_or(measure_throws(arm.entries, today).last_7_days);
    wanted.start_throws =
        std::min(wanted.start_throws, request.week_before ? wanted.start_throws : wanted.target_throws);
    wanted.rise = request.rise_percent.value_or(100 * wanted.rise) / 100;
    wanted.sessions_a_week = request.sessions_per_week.value_or(wanted.sessions_a_week);
    wanted.days_off = days_spoken_for(arm);
    return wanted;
}

std::optional<Refusal> refuse_hurt_or_gated(const ArmCase& arm, const ReferenceTables& tables, Date today) {
    for (const auto& pain : open_pains(arm.pains, arm.clearances, today))
        if (pain_block_of(tables, pain.region).throwing)
            return Refusal{RefusalCode::blocked_by_guard_rail,
                           "Pain entry " + std::to_string(pain.number) +
                               " is open: no throws are planned until a named adult records who cleared it.",
                           "athlete", arm.athlete->name, "a clearance by a clinician"};
    for (const auto& steps : steps_in_force(arm.steps))
        if (steps.origin == StepsOrigin::clinician)
            return Refusal{RefusalCode::blocked_by_guard_rail,
                           "A clinician's plan is in force (" + steps.author + ", from " +
                               steps.start.text() + "): it gates throwing, and no ramp is planned beside it.",
                           "athlete", arm.athlete->name, "the clinician's plan, or its end recorded"};
    return std::nullopt;
}

struct PlannedRamp {
    std::vector<ThrowStep> steps;
    std::vector<Date> dates; // empty: edited, undated
    std::vector<RampWeek> weeks;
    std::vector<std::string> notes;
    std::vector<std::string> words;
};

Result<PlannedRamp> edited_ramp(const PlanRampRequest& request, const ThrowRampWanted& wanted) {
    const auto steps = steps_given(request.steps);
    if (!steps)
        return steps.refusal();
    const auto notes = check_throw_steps(wanted, *steps);
    if (!notes)
        return notes.refusal();
    PlannedRamp ramp{*steps,
                     {},
                     {},
                     {},
                     {"These are your steps, checked. Each has its day when the one before is passed."}};
    for (const auto& note : *notes)
        ramp.notes.push_back("Step " + std::to_string(note.step + 1) + ": " + note.sentence);
    return ramp;
}

Result<PlannedRamp> planned_ramp(const ThrowRampWanted& wanted) {
    const auto ramp = plan_throw_ramp(wanted);
    if (!ramp)
        return ramp.refusal();
    PlannedRamp planned{ramp->steps, ramp->dates, {}, {}, {}};
    for (const auto& week : ramp->weeks) {
        planned.weeks.push_back({week.first.text(), week.throws});
        planned.words.push_back(week.words);
    }
    return planned;
}

ThrowSteps kept_steps(const PlanRampRequest& request, const FacilityView& view, const AthleteId& athlete,
                      std::vector<ThrowStep> steps, Date start, const std::string& recorded_by, Date today) {
    const bool ends = request.end.value_or(false);
    return {athlete,
            next_steps_number(view, athlete),
            StepsOrigin::ramp,
            recorded_by,
            start,
            1,
            ends ? std::vector<ThrowStep>() : std::move(steps),
            ends ? "The ramp ends." : "",
            recorded_by,
            today};
}

} // namespace

Result<PlanRampAnswer> plan_ramp(Workplace& workplace, const PlanRampRequest& request) {
    auto& inside = workplace.inside();
    const std::lock_guard writing(inside.writing);
    const auto view = inside.view();
    const Date today = inside.today();
    const auto found = athlete_named(*view, request.athlete);
    if (!found)
        return found.refusal();
    const auto arm = arm_case(*view, inside.tables, **found);
    const bool ends = request.end.value_or(false);
    if (const auto refusal = refuse_hurt_or_gated(arm, inside.tables, today); refusal && !ends)
        return *refusal;
    const auto wanted = ramp_wanted(request, arm, today);
    if (!wanted)
        return wanted.refusal();
    const auto ramp = ends ? Result<PlannedRamp>(PlannedRamp{{}, {}, {}, {}, {"The ramp in force ends."}})
                      : request.steps.empty() ? planned_ramp(*wanted)
                                              : edited_ramp(request, *wanted);
    if (!ramp)
        return ramp.refusal();
    PlanRampAnswer answer{};
    answer.athlete = (*found)->id.text;
    answer.name = (*found)->name;
    const auto facility = view->records.facility.value_or(Facility{"This facility"});
    for (std::size_t i = 0; i < ramp->steps.size(); ++i)
        answer.steps.push_back(shown_step(
            ramp->steps[i], ramp->dates.empty() ? std::nullopt : std::optional(ramp->dates[i]), facility));
    answer.weeks = ramp->weeks;
    answer.notes = ramp->notes;
    answer.words = ramp->words;
    if (request.recorded_by) {
        const auto person = person_given("recorded_by", *request.recorded_by, "who keeps this ramp");
        if (!person)
            return person.refusal();
        RecordSet more;
        more.throw_steps = {
            kept_steps(request, *view, (*found)->id, ramp->steps, wanted->start, *person, today)};
        inside.store.save_records(more);
        answer.kept = true;
        answer.number = more.throw_steps.front().number;
        answer.words.insert(answer.words.begin(), "Kept, by " + *person + ".");
    }
    const auto after = inside.view();
    answer.in_force =
        arm_steps(arm_case(*after, inside.tables, *after->athlete((*found)->id.text)), facility, today);
    answer.words.push_back(
        "A proposal in absolute throws, no published ramp. Pain stops it; the next step comes after one "
        "that was free of pain and left no soreness the next day.");
    answer.stop_and_refer = stop_and_refer_words(inside.tables);
    return answer;
}

} // namespace amentum
