// Is a request inside its ranges? The first refusal, or nothing.
#pragma once

#include "planning/plan_block.h"

#include <optional>

namespace amentum {

std::optional<Refusal> check_request(const BlockRequest& request);

} // namespace amentum
