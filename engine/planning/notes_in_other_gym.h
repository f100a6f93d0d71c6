// What stands at the foot of a block that another gym makes: where it is from, what was lost, what could not be told.
#pragma once

#include "planning/retarget_block.h"

namespace amentum {

std::vector<std::string> notes_in_other_gym(const RetargetRequest& request, const RetargetedBlock& made);

} // namespace amentum
