#include "operations/adjust_block.h"

#include "operations/inside/asked_change.h"
#include "operations/inside/begun_weeks.h"
#include "operations/inside/block_reach.h"
#include "operations/inside/block_request.h"
#include "operations/inside/kept_block.h"
#include "operations/inside/moved_lines.h"
#include "operations/inside/own_words.h"
#include "values/shortest_decimal.h"

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

// Sets are logged while a block is planned; one that changed meanwhile is planned again, the last time with writing held.
constexpr int patience = 3;

struct Adjusted {
    Block before;
    Block after;
    std::optional<BlockChange> change; // none: it holds already
    MoveDirection direction = MoveDirection::made;
};

Result<Adjusted> undone(Workplace::Inside& inside, const FacilityView& view, const Block& block) {
    const BlockChange* last = last_change(view.block_changes, block.id);
    const auto begun = begun_weeks(view, block);
    if (!last)
        return Refusal{RefusalCode::too_few_data, "No change of this block is left to take back.", "step",
                       "undo", "a block with a change of yours"};
    if (last->step == OwnStep::planned && !begun.empty())
        return Refusal{RefusalCode::already_held,
                       "Sets of this block are logged since it was planned anew, so it stays.", "step",
                       "undo", "a block without logged sets"};
    auto restored = inside.store.load_block_before(block.id, last->number);
    if (!restored)
        throw StoreFailure("the block before a change is missing");
    if (!begun.empty())
        restored = as_little_changed(block, *std::move(restored), begun);
    return Adjusted{block, *std::move(restored), *last, MoveDirection::undone};
}

Result<Adjusted> adjusted(Workplace::Inside& inside, const FacilityView& view, const Block& block,
                          const AdjustBlockRequest& asked) {
    if (asked.step == "undo")
        return undone(inside, view, block);
    const auto change = change_asked(inside, view, block, asked);
    if (!change)
        return change.refusal();
    auto in_force = changes_in_force(view.block_changes, block.id);
    if (holds_already(in_force, *change))
        return Adjusted{block, block, {}};
    if (const auto stands = check_stands(*change, block, inside.tables); !stands)
        return stands.refusal();
    const Athlete& athlete = *view.athlete(block.athlete.text);
    const auto begun = begun_weeks(view, block);
    if (std::ssize(begun) >= block.weeks)
        return Refusal{RefusalCode::already_held,
                       "Sets are logged in every week of this block, so nothing of it is left to change.",
                       "block", block.id.text, "a block with a week that has not begun"};
    in_force.push_back(*change);
    if (block_has_it(*change, block, begun, athlete))
        return Adjusted{block, block, *change};
    const auto kit = kit_named(view, block.kit.text);
    if (!kit)
        return kit.refusal();
    const auto work = limiter_work(view, inside.tables, *inside.roster_model(), athlete, inside.today());
    auto request = block_request(inside, view, athlete, **kit, asked_of(block), work);
    request.own_lines = own_lines(in_force, block.sessions_per_week);
    request.previous = block;
    auto planned = plan_block(request);
    if (!planned)
        return planned.refusal();
    return Adjusted{block, as_little_changed(block, *std::move(planned), begun), *change};
}

std::string weeks_that_stay(const std::set<int>& begun) {
    if (begun.empty())
        return "";
    std::string text;
    for (const int week : begun)
        text += (text.empty() ? "" : ", ") + std::to_string(week);
    return begun.size() == 1 ? " Week " + text + " stays as it is: sets of it are logged."
                             : " Weeks " + text + " stay as they are: sets of them are logged.";
}

std::string points_words(const BlockAnswer& before, const BlockAnswer& after) {
    if (!before.reach || !after.reach)
        return ".";
    const double gain = after.reach->points - before.reach->points;
    const std::string now = "; the block has " + format_fixed(after.reach->points, 1) + " points, ";
    if (std::abs(gain) < 0.05)
        return now + "as before.";
    return now + format_fixed(std::abs(gain), 1) + (gain < 0 ? " fewer" : " more") + " than before.";
}

std::string said(const Adjusted& made, const ReferenceTables& tables, std::size_t moved) {
    if (!made.change)
        return "That holds already; nothing is changed";
    const std::string what = change_words(*made.change, tables);
    const std::string lines = moved == 0   ? "No line is changed"
                              : moved == 1 ? "1 line is changed"
                                           : std::to_string(moved) + " lines are changed";
    return (made.direction == MoveDirection::undone ? "Taken back: " + what + " " : what + " ") + lines;
}

AdjustBlockAnswer answered(Workplace::Inside& inside, const Adjusted& made, const BlockAnswer& before) {
    const auto view = inside.view();
    AdjustBlockAnswer answer{priced_answer(inside, *view, made.after), {}, ""};
    if (made.change)
        answer.moved = moved_lines(made.before, made.after, *made.change, made.direction, inside.tables);
    answer.words = said(made, inside.tables, answer.moved.size()) + points_words(before, answer.block) +
                   weeks_that_stay(begun_weeks(*view, made.after));
    return answer;
}

bool unchanged_since(const FacilityView& then, const FacilityView& now, const Block& block) {
    const auto& blocks = now.records.blocks;
    const auto held =
        std::find_if(blocks.begin(), blocks.end(), [&](const auto& each) { return each.id == block.id; });
    return held != blocks.end() && *held == block &&
           changes_in_force(then.block_changes, block.id) == changes_in_force(now.block_changes, block.id) &&
           next_change_number(then.block_changes, block.id) ==
               next_change_number(now.block_changes, block.id) &&
           begun_weeks(then, block) == begun_weeks(now, block);
}

void save(Workplace::Inside& inside, const Adjusted& made) {
    if (made.change && made.direction == MoveDirection::undone)
        inside.store.undo_block_change(made.before.id, made.change->number, inside.today(), made.after);
    else if (made.change)
        inside.store.save_block_change(*made.change, made.before, made.after);
}

} // namespace

Result<AdjustBlockAnswer> adjust_block(Workplace& workplace, const AdjustBlockRequest& asked) {
    auto& inside = workplace.inside();
    for (int attempt = 1;; ++attempt) {
        std::unique_lock writing(inside.writing, std::defer_lock);
        if (attempt == patience)
            writing.lock();
        const auto view = inside.view();
        const auto block = kept_block(*view, asked.block, "block");
        if (!block)
            return block.refusal();
        const auto made = adjusted(inside, *view, **block, asked);
        if (!made)
            return made.refusal();
        const auto before = priced_answer(inside, *view, made->before);
        if (!writing)
            writing.lock();
        if (!unchanged_since(*view, *inside.view(), made->before))
            continue;
        save(inside, *made);
        writing.unlock();
        return answered(inside, *made, before);
    }
}

} // namespace amentum
