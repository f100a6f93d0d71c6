#include "operations/inside/begun_weeks.h"

#include "planning/block_so_far.h"

namespace amentum {

std::set<int> begun_weeks(const FacilityView& view, const Block& block) {
    const auto& sets = view.records.sets;
    const auto lines = lines_of_sets(block, sets);
    std::set<int> weeks;
    for (std::size_t i = 0; i < sets.size(); ++i) {
        if (lines[i])
            weeks.insert(lines[i]->week);
        const int week = 1 + (sets[i].date - block.start) / 7;
        if (sets[i].block && *sets[i].block == block.id && sets[i].date >= block.start && week <= block.weeks)
            weeks.insert(week);
    }
    return weeks;
}

} // namespace amentum
