#include "planning/refuse_plan.h"

#include "planning/exact_plan.h"

namespace amentum {

Refusal refuse_no_exercise(const BlockRequest& request, const AllowedExercises& allowed) {
    const std::string restrictions = std::to_string(request.athlete.restrictions.size());
    return {RefusalCode::no_block_fits,
            "No exercise is left for any quality: of " + std::to_string(request.catalogue.size()) + ", " +
                std::to_string(allowed.missing_equipment) + " need equipment that \"" + request.kit.name +
                "\" does not have, " + std::to_string(allowed.too_young) + " are for older athletes, and " +
                restrictions + " restriction(s) stand.",
            "kit", request.kit.name, "equipment for at least one exercise the athlete may do"};
}

Refusal refuse_no_day(const BlockRequest& request) {
    return {RefusalCode::no_block_fits,
            "No day of the " + std::to_string(request.weeks) +
                " weeks is free: the training weekdays and the athlete's "
                "days off, games and starts leave none.",
            "weekdays", "", "at least one day without game, start or rest"};
}

Refusal refuse_stopped() {
    return {RefusalCode::stopped, "The search was stopped before it had a block.", "", "", ""};
}

Refusal refuse_not_found() {
    return {RefusalCode::no_block_fits,
            "No block was found within these limits, and no set of them could be shown to be in conflict.",
            "", "", "fewer or wider limits"};
}

std::optional<Refusal> refuse_conflict(const BlockProblem& problem) {
    const auto conflict = explain_conflict(problem);
    if (!conflict)
        return {};
    std::string together, ways;
    for (const auto& each : conflict->relaxing) {
        together += (together.empty() ? "" : ", ") + std::string(limit_words(each.group));
        if (each.by)
            ways += " " + each.words + ".";
    }
    return Refusal{RefusalCode::no_block_fits,
                   std::string(conflict->proven ? "These limits cannot hold together: "
                                                : "These limits probably cannot hold together: ") +
                       together + "." + (ways.empty() ? " No one of them alone is enough to relax." : ways),
                   "", "", "one of these limits relaxed"};
}

} // namespace amentum
