// One prior as an answer shows it: what is in force, what was published, every edit, and what the records make of it.
#pragma once

#include "operations/inside/inside.h"
#include "operations/priors.h"

namespace amentum {

ShownPriorEdit shown_edit(const PriorEdit&);
std::vector<ShownPrior> shown_slopes(const FacilityView&, const ReferenceTables&, const RosterModel&);
std::vector<ShownPrior> shown_attainable_changes(const FacilityView&, const ReferenceTables&);

} // namespace amentum
