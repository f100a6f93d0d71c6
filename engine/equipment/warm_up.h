// The sets before the first working set, each a load the gym can make, with the plates handled between them.
//
// Wanted, as fractions of the working load, and repetitions:
//   up to 60 kg    0.4 x 6, 0.8 x 3
//   up to 140 kg   0.4 x 6, 0.6 x 4, 0.8 x 2
//   above          0.4 x 6, 0.6 x 4, 0.8 x 2, 0.9 x 1
// Two sets of 6 at 40 % and 80 % of the working load served better than one long light set [Ribeiro2020];
// rising loads with falling repetitions are the usual ramp [HaffTriplett2016]. The steps at 60 and 90 %, the
// repetitions after the first, and the bounds of 60 and 140 kg are a proposal of this project, no source.
// Each step is the heaviest load not above the wanted one; where even the bar is above, the lightest there
// is.
// Steps that become the same load are one step, and no step reaches the working load: a working load that is
// the empty bar has no ramp. `moves` counts plates of one side (stack_moves.h), from the empty bar on.
// Range and refusals: those of solve_load, for the working load.
// What it cannot tell: how stiff or cold the athlete is; the general warm-up comes first.
//
// Example: bar 20 kg, all usual pairs, working load 100 kg -> 40 x 6, 60 x 4, 80 x 2.
#pragma once

#include "equipment/load_table.h"

namespace amentum {

struct WarmUpStep {
    double fraction; // of the working load, wanted
    MadeLoad load;
    int reps;
    int moves; // plates handled on one side to get here; 0 for anything but plates
};

struct WarmUp {
    std::vector<WarmUpStep> steps; // ascending in load
    MadeLoad working;              // the heaviest makeable load not above the one asked for
    int moves_to_working;          // plates of one side, from the last step
    int moves;                     // of one side, in all, from the empty bar to the working load
};

Result<WarmUp> plan_warm_up(const Kit& kit, LoadMeans means, Mass working_load,
                            const std::optional<std::string>& item = std::nullopt);

} // namespace amentum
