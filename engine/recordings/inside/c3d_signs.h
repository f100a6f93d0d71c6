// Which way is up in the forces read, and what the plates read while empty; see c3d_forces.h.
#pragma once

#include "recordings/inside/c3d_plan.h"

namespace amentum {

// Turns the plates that show standing people as downward force, with a note each.
void turn_upward(ForceRecording& recording);

// Says what the plates read on average in the rows that FORCE_PLATFORM:ZERO names. Subtracts nothing.
void note_empty_plates(const C3dPlan& plan, ForceRecording& recording);

} // namespace amentum
