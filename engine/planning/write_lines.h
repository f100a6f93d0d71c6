// From a plan to the lines of a sheet: days, order, loads, repetitions, reasons, and stand-ins near a start.
//
// Order within a session: speed work first, while fresh, then main lifts (the legs' first), assistance, shoulder, trunk,
// mobility. A line heavy for the legs within 48 h before a start, or hard on a tired arm on its day or the day after, gives
// way to the most valuable line that is neither, not longer and not in the session: speed work to speed work, strength to
// lighter strength, shoulder or trunk work. In a reduced week sets are halved (wave.h).
// What it cannot tell: whether the day suits the athlete.
#pragma once

#include "planning/state_problem.h"

namespace amentum {

struct WrittenLines {
    std::vector<BlockLine> lines;
    std::vector<std::string> spared; // left out near a start without a stand-in, each name once
};

WrittenLines write_lines(const BlockRequest&, const AllowedExercises&, const QualityWorth&, const KitLoads&,
                         const StatedProblem&, const PlanSets&);

} // namespace amentum
