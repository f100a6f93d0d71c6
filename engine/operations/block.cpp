#include "operations/block.h"

#include "operations/inside/block_answer.h"

namespace amentum {

Result<BlockAnswer> block(Workplace& workplace, const KeptBlockRequest& request) {
    auto& inside = workplace.inside();
    const auto view = inside.view();
    const Block* found = nullptr;
    std::vector<std::string> known;
    for (const auto& each : view->records.blocks) {
        known.push_back(each.id.text);
        const bool newest_of_athlete =
            each.athlete.text == slug(request.block) && (!found || found->start < each.start);
        if (each.id.text == request.block || newest_of_athlete)
            found = &each;
    }
    if (!found)
        return refuse_unknown("block", request.block, known);
    if (request.week && (*request.week < 1 || *request.week > found->weeks))
        return refuse_range("week", *request.week, 1, found->weeks, "");
    return block_answer(inside, *view, *found, request.week);
}

} // namespace amentum
