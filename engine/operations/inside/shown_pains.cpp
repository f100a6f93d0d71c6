#include "operations/inside/shown_pains.h"

#include "throwing_workload/open_pains.h"

#include <algorithm>

namespace amentum {
namespace {

const PainClearance* clearance_of(const FacilityView& view, const PainEntry& pain, Date day) {
    for (const auto& each : view.records.clearances)
        if (each.athlete == pain.athlete && each.number == pain.number && each.date <= day &&
            pain.date <= each.date)
            return &each;
    return nullptr;
}

std::string clearance_words(const PainClearance& clearance) {
    return "Cleared on " + clearance.date.text() + " by " + clearance.cleared_by + ", entered by " +
           clearance.recorded_by + " on " + clearance.recorded.text() +
           (clearance.words.empty() ? "." : ": " + clearance.words);
}

ShownPain shown_pain(const ReferenceTables& tables, const PainEntry& pain, const PainClearance* clearance) {
    const PainBlock& block = pain_block_of(tables, pain.region);
    std::string sign;
    for (const auto& each : tables.stop_signs)
        if (each.key == pain.sign)
            sign = each.sentence;
    return {pain.number,
            pain.date.text(),
            word(pain.region),
            block.name,
            sign,
            pain.words,
            pain.noted_by,
            clearance == nullptr,
            block.throwing,
            clearance ? clearance_words(*clearance) : ""};
}

} // namespace

const PainBlock& pain_block_of(const ReferenceTables& tables, PainRegion region) {
    return *std::find_if(tables.pain_blocks.begin(), tables.pain_blocks.end(),
                         [&](const auto& each) { return each.region == region; });
}

std::vector<ShownPain> shown_pains(const ReferenceTables& tables, const FacilityView& view,
                                   const AthleteId& athlete, Date day) {
    std::vector<ShownPain> shown;
    for (const auto& pain : view.records.pains)
        if (pain.athlete == athlete && pain.date <= day)
            shown.push_back(shown_pain(tables, pain, clearance_of(view, pain, day)));
    std::sort(shown.begin(), shown.end(), [](const auto& a, const auto& b) {
        return a.open != b.open ? a.open : std::tie(b.date, b.number) < std::tie(a.date, a.number);
    });
    return shown;
}

std::vector<PainEntry> open_pains_of(const FacilityView& view, const AthleteId& athlete, Date day) {
    std::vector<PainEntry> own;
    for (const auto& pain : open_pains(view.records.pains, view.records.clearances, day))
        if (pain.athlete == athlete)
            own.push_back(pain);
    return own;
}

std::string pain_stops_words(const ReferenceTables& tables, const Athlete& athlete, PainRegion region) {
    const PainBlock& block = pain_block_of(tables, region);
    return block.sentence + " This holds for " + athlete.name +
           " until a named adult records who cleared it and when; nobody can override it here.";
}

} // namespace amentum
