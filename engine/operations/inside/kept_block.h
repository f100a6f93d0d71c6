// Which kept block is meant: by its id, or by an athlete's name, which stands for that athlete's newest block.
#pragma once

#include "operations/inside/facility_view.h"
#include "values/refusal.h"

#include <string>
#include <vector>

namespace amentum {

// Refuses (unknown_name) what is neither, under the field it was given in. Points into the view.
Result<const Block*> kept_block(const FacilityView&, const std::string& named, const std::string& field);

// All kept blocks of one athlete, the newest first.
std::vector<const Block*> blocks_of(const FacilityView&, const AthleteId&);

} // namespace amentum
