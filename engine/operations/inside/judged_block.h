// Which block is judged, and one quality of it: forecast, test after, others over the same weeks, in shown units and words.
#pragma once

#include "inference/block_excess.h"
#include "operations/inside/inside.h"
#include "operations/judge_block.h"

namespace amentum {

struct BlockSpan {
    std::string block; // id; empty when dates were given
    Date start, last;
    bool finished;
    std::vector<std::string> emphasised; // quality keys, most sets first; empty when dates were given

    BlockDays days() const;
};

Result<BlockSpan> span_of_block(const FacilityView&, const Athlete&, const JudgeBlockRequest&, Date today);

struct JudgedOrWhy {
    std::optional<JudgedQuality> judged;
    bool no_test_before = false, no_test_after = false;
};
// `quality` is the number in the fit, which stands.
JudgedOrWhy judged_quality(const Workplace::Inside&, const FacilityView&, const RosterModel&, const Athlete&,
                           const BlockSpan&, int quality);

} // namespace amentum
