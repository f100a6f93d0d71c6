#include "operations/plan_block.h"

#include "operations/inside/block_reach.h"
#include "operations/inside/block_request.h"
#include "operations/inside/planned_anew.h"

#include <algorithm>

namespace amentum {
namespace {

Result<std::vector<int>> weekdays_of(const std::vector<std::string>& names) {
    static const std::vector<std::string> known{"monday", "tuesday",  "wednesday", "thursday",
                                                "friday", "saturday", "sunday"};
    std::vector<int> days;
    for (const auto& name : names) {
        const auto found = std::find(known.begin(), known.end(), name);
        if (found == known.end())
            return refuse_choice("training_days", name, known);
        days.push_back(static_cast<int>(found - known.begin()) + 1);
    }
    return days;
}

Result<BlockRequest> request_for(const Workplace::Inside& inside, const FacilityView& view,
                                 const PlanBlockRequest& asked, const Athlete& athlete, const Kit& kit,
                                 const LimiterWork& work) {
    const auto start = first_day(asked.start, inside.today());
    if (!start)
        return start.refusal();
    const auto weekdays = weekdays_of(asked.training_days);
    if (!weekdays)
        return weekdays.refusal();
    const auto effort = effort_named(asked.effort);
    if (!effort)
        return effort.refusal();
    auto request = block_request(inside, view, athlete, kit,
                                 {*start, asked.weeks.value_or(4), asked.sessions_per_week.value_or(3),
                                  asked.minutes.value_or(60), *weekdays},
                                 work);
    request.effort = *effort;
    return request;
}

} // namespace

Result<BlockAnswer> plan_block(Workplace& workplace, const PlanBlockRequest& asked) {
    auto& inside = workplace.inside();
    const auto view = inside.view();
    const auto athlete = athlete_named(*view, asked.athlete);
    if (!athlete)
        return athlete.refusal();
    const auto kit = kit_named(*view, asked.kit.value_or((*athlete)->kit.text));
    if (!kit)
        return kit.refusal();
    const auto work = limiter_work(*view, inside.tables, *inside.roster_model(), **athlete, inside.today());
    const auto request = request_for(inside, *view, asked, **athlete, **kit, work);
    if (!request)
        return request.refusal();
    auto block = plan_block(*request);
    if (!block)
        return block.refusal();
    if (!work.answer.can_tell)
        block->notes.insert(block->notes.begin(), records_undecided);
    const std::lock_guard writing(inside.writing); // sets are logged while a block is planned
    if (const auto begun = check_not_begun(inside, *block); !begun)
        return begun.refusal();
    const auto ended = save_planned_anew(inside, *block);
    auto answer = priced_answer(inside, *inside.view(), *block, std::nullopt, &work);
    if (!ended.empty())
        answer.notes.push_back(ended);
    return answer;
}

} // namespace amentum
