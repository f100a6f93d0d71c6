#include "operations/retarget_block.h"

#include "operations/inside/block_request.h"
#include "operations/inside/body_given.h"
#include "operations/inside/kept_block.h"
#include "operations/inside/lift_of_exercise.h"
#include "operations/inside/retarget_answer.h"

#include <algorithm>

namespace amentum {
namespace {

// A gym that is no longer held has no items: its handles' height is then the usual one.
Kit kit_of_block(const FacilityView& view, const Block& block) {
    const auto& kits = view.records.kits;
    const auto found =
        std::find_if(kits.begin(), kits.end(), [&](const auto& kit) { return kit.id == block.kit; });
    return found == kits.end() ? Kit{block.kit, block.kit.text, MassUnit::kg, {}} : *found;
}

Result<Done> check_may_keep(const FacilityView& view, const Block& block, const Kit& kit) {
    if (block.kit == kit.id)
        return Refusal{RefusalCode::already_held,
                       "The block " + block.id.text + " is written for " + kit.name +
                           " already, so there is nothing to keep.",
                       "kit", kit.id.text, "another gym, or keep left out"};
    const BlockId id = id_in_other_gym(block, kit.id);
    for (const auto& set : view.records.sets)
        if (set.block && *set.block == id)
            return Refusal{RefusalCode::already_held,
                           "Sets of the block " + id.text + " are already logged, so it is not replaced.",
                           "keep", "true", "keep left out"};
    return Done{};
}

RetargetRequest request_of(const Workplace::Inside& inside, const FacilityView& view, const Block& block,
                           const Kit& first, const Athlete& athlete, const Kit& kit) {
    RetargetRequest request{
        block, first, block_request(inside, view, athlete, kit, asked_of(block), LimiterWork{}), {}, {}, {}};
    BodyRequest body_of_athlete;
    body_of_athlete.athlete = athlete.id.text;
    const auto body = body_given(inside, view, body_of_athlete);
    if (!body)
        return request;
    const auto& exercises = inside.tables.exercises;
    request.body = body->body;
    request.setups_first = usual_setups(body->body, exercises, first, body->facility);
    request.setups_to = usual_setups(body->body, exercises, kit, body->facility);
    return request;
}

} // namespace

Result<RetargetBlockAnswer> retarget_block(Workplace& workplace, const RetargetBlockRequest& asked) {
    auto& inside = workplace.inside();
    const bool keep = asked.keep.value_or(false);
    std::unique_lock writing(inside.writing, std::defer_lock);
    if (keep)
        writing.lock();
    const auto view = inside.view();
    const auto block = kept_block(*view, asked.block, "block");
    if (!block)
        return block.refusal();
    const auto athlete = athlete_named(*view, (*block)->athlete.text);
    if (!athlete)
        return athlete.refusal();
    const auto kit = kit_named(*view, asked.kit);
    if (!kit)
        return kit.refusal();
    if (keep)
        if (const auto may = check_may_keep(*view, **block, **kit); !may)
            return may.refusal();
    const Kit first = kit_of_block(*view, **block);
    const auto request = request_of(inside, *view, **block, first, **athlete, **kit);
    const auto made = retarget_block(request);
    auto answer = retarget_answer(inside, *view, {request, made, **athlete});
    BodyRequest body_of_athlete;
    body_of_athlete.athlete = (*athlete)->id.text;
    if (const auto body = body_given(inside, *view, body_of_athlete))
        answer.cautions = body->cautions;
    if (keep) {
        inside.store.save_block(made.block);
        answer.kept_block = made.block.id.text;
    }
    return answer;
}

} // namespace amentum
