// The numbers of a jump from standing, and what to read with them.
#pragma once

#include "force_traces/inside/jump_view.h"

namespace amentum::inside {

void add_jump_metrics(const JumpView& view, bool with_dip, TraceMeasurement& into);
void add_jump_warnings(const JumpView& view, bool with_dip, TraceMeasurement& into);

} // namespace amentum::inside
