// The pain entries of one thrower as an answer shows them: open ones first, then the newest.
#pragma once

#include "operations/check_arm.h"
#include "operations/inside/inside.h"

namespace amentum {

const PainBlock& pain_block_of(const ReferenceTables&, PainRegion);
std::vector<ShownPain> shown_pains(const ReferenceTables&, const FacilityView&, const AthleteId&, Date day);
std::vector<PainEntry> open_pains_of(const FacilityView&, const AthleteId&, Date day);

// What an entry stops, and what ends it.
std::string pain_stops_words(const ReferenceTables&, const Athlete&, PainRegion);

} // namespace amentum
