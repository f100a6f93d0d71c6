#include "operations/block.h"

#include "operations/inside/block_reach.h"
#include "operations/inside/kept_block.h"

namespace amentum {

Result<BlockAnswer> block(Workplace& workplace, const KeptBlockRequest& request) {
    auto& inside = workplace.inside();
    const auto view = inside.view();
    const auto found = kept_block(*view, request.block, "block");
    if (!found)
        return found.refusal();
    const Block& kept = **found;
    if (request.week && (*request.week < 1 || *request.week > kept.weeks))
        return refuse_range("week", *request.week, 1, kept.weeks, "");
    return priced_answer(inside, *view, kept, request.week);
}

} // namespace amentum
