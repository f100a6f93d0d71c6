// Which sums of which analog channels are kept of a C3D file, and what is said about the choice.
//
// Vertical is the force along the lab axis nearest to the plate's normal, before its sign is known; lateral the one
// along the lab axis a person names. A plate is level when it leans less than 0.01 degrees: then Fx and Fy are not read
// for the vertical (they would change it by less than 0.2 N in 1,000).
#pragma once

#include "recordings/force_recording.h"
#include "recordings/inside/c3d_plates.h"

namespace amentum {

struct C3dPlanned {
    std::string name;
    Side side;
    C3dSeries vertical;
    C3dSeries lateral; // empty: not kept
};

struct C3dPlan {
    std::vector<C3dPlanned> plates; // one or two
    std::optional<std::pair<std::uint64_t, std::uint64_t>>
        empty_rows;         // of FORCE_PLATFORM:ZERO: first, behind the last
    std::string zero_words; // "frames 1 to 10"
    std::vector<std::string> notes;
};

Result<C3dPlan> plan_c3d_series(const C3dHead& head, const C3dDataLayout& layout,
                                const RecordingGiven& given);

} // namespace amentum
