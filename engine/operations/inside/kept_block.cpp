#include "operations/inside/kept_block.h"

#include <algorithm>

namespace amentum {

Result<const Block*> kept_block(const FacilityView& view, const std::string& named,
                                const std::string& field) {
    const Block* found = nullptr;
    std::vector<std::string> known;
    for (const auto& each : view.records.blocks) {
        if (each.id.text == named)
            return &each;
        known.push_back(each.id.text);
        if (each.athlete.text == slug(named) && (!found || found->start < each.start))
            found = &each;
    }
    if (!found)
        return refuse_unknown(field, named, known);
    return found;
}

std::vector<const Block*> blocks_of(const FacilityView& view, const AthleteId& athlete) {
    std::vector<const Block*> own;
    for (const auto& each : view.records.blocks)
        if (each.athlete == athlete)
            own.push_back(&each);
    std::stable_sort(own.begin(), own.end(),
                     [](const auto* a, const auto* b) { return b->start < a->start; });
    return own;
}

} // namespace amentum
