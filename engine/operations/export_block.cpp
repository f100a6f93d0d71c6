#include "operations/export_block.h"

#include "operations/inside/inside.h"
#include "operations/inside/kept_block.h"
#include "records/block_sheet.h"

namespace amentum {

Result<ExportBlockAnswer> export_block(Workplace& workplace, const ExportBlockRequest& request) {
    const auto view = workplace.inside().view();
    const auto found = kept_block(*view, request.block, "block");
    if (!found)
        return found.refusal();
    const Block& block = **found;
    const auto kit = kit_named(*view, block.kit.text);
    if (!kit)
        return kit.refusal();
    return ExportBlockAnswer{block.id.text,
                             block.start.text(),
                             block.minutes,
                             (*kit)->name,
                             {{block.id.text + ".csv", "a block", write_block_sheet(block, (*kit)->unit)}}};
}

} // namespace amentum
