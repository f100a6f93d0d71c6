// Do the reference tables agree with each other? The first fault, or nothing.
//
// Each table is given with the line of each of its rows, so that the refusal can name file, line and column.
// Checks: keys are unique; every quality, test, caution and alternative that is named exists; an alternative
// is not itself spoken against by the caution it stands for; lightest <= heaviest; plausible_low <
// plausible_high; one row of priors a quality; the bands of age of one organisation and sport do not overlap
// and their rest bands ascend; each table of limits is whole (throwing_workload/check_pitch_table.h); every region of
// pain has one row, in the order of its words, whose patterns and cautions exist and which blocks something. What it
// cannot tell: whether the numbers are true.
#pragma once

#include "records/reference_tables.h"

#include <optional>
#include <vector>

namespace amentum {

struct ReferenceLines {
    std::vector<int> qualities, test_kinds, exercises, cautions, velocity_priors, attainable_changes,
        pitch_rules, stop_signs, pain_blocks;
};

std::optional<Refusal> check_reference_links(const ReferenceTables& tables, const ReferenceLines& lines);

} // namespace amentum
