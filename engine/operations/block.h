// block: a block as it was kept, with what has been logged against it.
#pragma once

#include "operations/plan_block.h"

namespace amentum {

struct KeptBlockRequest {
    std::string block;       // its id, or an athlete's name for that athlete's newest block
    std::optional<int> week; // only this week; left out: all
};
BOOST_DESCRIBE_STRUCT(KeptBlockRequest, (), (block, week))

Result<BlockAnswer> block(Workplace&, const KeptBlockRequest&);

} // namespace amentum
