// Findings of the guard rails as an answer shows them.
#pragma once

#include "guard_rails/finding.h"
#include "operations/athlete_record.h"

#include <vector>

namespace amentum {

std::vector<ShownFinding> shown_findings(const std::vector<Finding>&);

}  // namespace amentum
