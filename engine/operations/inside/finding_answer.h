// Findings of the guard rails as an answer shows them.
#pragma once

#include "guard_rails/care_record.h"
#include "guard_rails/finding.h"
#include "operations/athlete_record.h"
#include "operations/inside/inside.h"

#include <vector>

namespace amentum {

std::vector<ShownFinding> shown_findings(const std::vector<Finding>&);

// Pain entries, clearances and answered stops of everybody; read only while `tables` and the view stand.
CareRecord care_record(const ReferenceTables& tables, const FacilityView&);

// Every rule about blocks, checked anew on what is about to be shown.
std::vector<ShownFinding> block_findings(const Workplace::Inside&, const FacilityView&, const Block&,
                                         const Athlete&, const Kit&);

} // namespace amentum
