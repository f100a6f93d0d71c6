#include "guard_rails/inside/pain_words.h"

#include "throwing_workload/open_pains.h"

#include <algorithm>

namespace amentum {
namespace {

const PainBlock* row_of(const CareRecord& care, const PainEntry& pain) {
    const auto found = std::find_if(care.pain_blocks.begin(), care.pain_blocks.end(),
                                    [&](const PainBlock& row) { return row.region == pain.region; });
    return found == care.pain_blocks.end() ? nullptr : &*found;
}

} // namespace

std::vector<PainEntry> open_pains_of(const CareRecord& care, const AthleteId& athlete, Date day) {
    auto open = open_pains(care.pains, care.clearances, day);
    std::erase_if(open, [&](const PainEntry& pain) { return pain.athlete != athlete; });
    return open;
}

bool pain_blocks_exercise(const CareRecord& care, const PainEntry& pain, const Exercise& exercise) {
    const auto* row = row_of(care, pain);
    return !row || blocks(*row, exercise);
}

bool pain_blocks_throwing(const CareRecord& care, const PainEntry& pain) {
    const auto* row = row_of(care, pain);
    return !row || row->throwing;
}

std::string describe_pain(const CareRecord& care, const PainEntry& pain) {
    const auto* row = row_of(care, pain);
    return "pain of the " + (row ? row->name : word(pain.region)) + ", noted on " + pain.date.text() +
           " (entry " + std::to_string(pain.number) + ")";
}

} // namespace amentum
