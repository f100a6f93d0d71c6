#include "operations/override_caution.h"

#include "operations/inside/entry_fields.h"
#include "operations/inside/inside.h"
#include "values/letters.h"

namespace amentum {
namespace {} // namespace

Result<OverrideCautionAnswer> override_caution(Workplace& workplace, const OverrideCautionRequest& request) {
    auto& inside = workplace.inside();
    const std::lock_guard writing(inside.writing);
    const auto view = inside.view();
    const auto athlete = athlete_named(*view, request.athlete);
    if (!athlete)
        return athlete.refusal();
    const Exercise* exercise = inside.tables.exercise(request.exercise);
    const Caution* caution = inside.tables.caution(request.caution);
    std::vector<std::string> exercises, cautions;
    for (const auto& each : inside.tables.exercises)
        exercises.push_back(each.key);
    for (const auto& each : inside.tables.cautions)
        cautions.push_back(each.key);
    if (!exercise)
        return refuse_unknown("exercise", request.exercise, exercises);
    if (!caution)
        return refuse_unknown("caution", request.caution, cautions);
    if (!caution->overridable)
        return Refusal{RefusalCode::blocked_by_guard_rail,
                       caution->sentence + " This caution is not for a coach to override.", "caution",
                       request.caution, "a clinician's decision, outside this tool"};
    if (letters_in(request.reason) < shortest_reason)
        return Refusal{RefusalCode::caution_needs_reason,
                       "Please say why, in a sentence: the reason is kept with the block.", "reason",
                       request.reason, "at least 10 letters"};
    const std::string coach = trimmed(request.coach);
    if (coach.empty())
        return refuse_missing("coach", "who takes this decision");
    inside.store.save_records(
        RecordSet{{},
                  {},
                  {},
                  {},
                  {},
                  {},
                  {},
                  {},
                  {{(*athlete)->id, exercise->key, caution->key, request.reason, coach, inside.today()}}});
    return OverrideCautionAnswer{coach + " takes " + exercise->name + " for " + (*athlete)->name +
                                 " in spite of the caution (" + caution->condition + "): " + request.reason +
                                 " It is kept, and shows on the next block."};
}

} // namespace amentum
