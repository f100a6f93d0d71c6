// A kept trace and whose it is; refuses an id nobody holds.
#pragma once

#include "operations/inside/inside.h"

namespace amentum {

struct HeldTrace {
    KeptTrace trace;
    Athlete athlete;
};
Result<HeldTrace> trace_named(Workplace::Inside&, const std::string& id);

} // namespace amentum
