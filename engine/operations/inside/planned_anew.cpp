#include "operations/inside/planned_anew.h"

namespace amentum {

std::string save_planned_anew(Workplace::Inside& inside, const Block& block) {
    const auto earlier = inside.store.load_block(block.id);
    const auto changes = inside.store.list_block_changes();
    const auto in_force = changes_in_force(changes, block.id);
    if (!earlier || (*earlier == block && in_force.empty())) {
        inside.store.save_block(block);
        return "";
    }
    const BlockChange change{
        block.id, next_change_number(changes, block.id), OwnStep::planned, "", "", {}, {}, {}, inside.today(),
        {}};
    inside.store.save_block_change(change, *earlier, block);
    if (in_force.empty())
        return "";
    return "Planned anew: " +
           (in_force.size() == 1 ? std::string("1 change of yours ends")
                                 : std::to_string(in_force.size()) + " changes of yours end") +
           " with it. Taking it back brings the block before it back as it was.";
}

Result<Done> check_not_begun(Workplace::Inside& inside, const Block& block) {
    if (!inside.store.any_set_of(block.id))
        return Done{};
    return Refusal{RefusalCode::already_held,
                   "Sets of the block from " + block.start.text() +
                       " are already logged, so it is not replaced; start the new one on another day.",
                   "start", block.start.text(), "another first day"};
}

} // namespace amentum
