#include "operations/inside/begun_weeks.h"

#include <cstdlib>

namespace amentum {

const BlockLine* line_for(const Block& block, const SetDone& set) {
    if (set.athlete != block.athlete || (set.block && *set.block != block.id))
        return nullptr;
    const BlockLine* nearest = nullptr;
    const auto days_off = [&](const BlockLine& line) { return std::abs(line.date - set.date); };
    for (const auto& line : block.lines)
        if (line.exercise == set.exercise && (!nearest || days_off(line) < days_off(*nearest)))
            nearest = &line;
    const bool meant = nearest && (set.block || days_off(*nearest) == 0);
    return meant ? nearest : nullptr;
}

std::set<int> begun_weeks(const FacilityView& view, const Block& block) {
    std::set<int> weeks;
    for (const auto& set : view.records.sets) {
        if (const BlockLine* line = line_for(block, set))
            weeks.insert(line->week);
        const int week = 1 + (set.date - block.start) / 7;
        if (set.block && *set.block == block.id && set.date >= block.start && week <= block.weeks)
            weeks.insert(week);
    }
    return weeks;
}

} // namespace amentum
