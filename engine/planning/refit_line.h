// What becomes of one line of a block when it is done as a given exercise in the other gym?
//
// Same exercise, the very load makeable: the line as it stands. Otherwise the load aimed at is
//   the load that asks the same of the lead leg (leg_demand.h), or else the one by usual maxima (lift_swap.h);
//   never above the one by usual maxima, where grip, upper back or balance give out before the leg;
//   never above the exercise's own heaviest;
// and made as the heaviest this gym has that is not above it. Repetitions stay while the load reaches 0.90 of what asks the
// same; below that they follow the load really made, Epley's line with the reserve written [Epley1985], never fewer than
// written: repetitions before load [ACSM2009]. Speed work keeps its repetitions.
// Loads that cannot be compared (bands, body work, balls of another mass, no test behind one of them): the planner's own
// sets for that exercise and week (plan_sets.h), and the loads are said to be not compared.
// None: the gym cannot make it, it does not serve the purpose, or its lightest load is above the one aimed at.
// What it cannot tell: how the athlete feels today; the reserve, not the load, is the prescription then.
//
// Example: 180 lb on a safety bar, dumbbells to 50 lb: a pair of 50, more repetitions, 64 % of the lead leg's demand.
#pragma once

#include "planning/kit_loads.h"
#include "planning/leg_demand.h"
#include "planning/plan_sets.h"
#include "planning/retargeted_line.h"

#include <string>
#include <vector>

namespace amentum {

struct OtherGym {
    const BlockRequest& request; // with the other kit
    const KitLoads& loads;       // of the other kit
    const LegDemand& legs;
    const std::vector<WeekOfWave>& wave;
    Loading loading;
    const Kit& first_kit;

    bool same_kit() const { return first_kit == request.kit; }
};

// The end of a limit where a heavier load of this gym would do.
inline const std::string heaviest_here = "the heaviest here";

struct Refit {
    LoadedSets sets;
    Change change;
    IntentBasis basis;
    double reach; // over 1 cut to 1
    double served;
    bool loads_compared;
    std::optional<EqualLoad> equal;
    std::optional<Mass> aimed;
    std::string limit;

    double kept() const {
        return basis == IntentBasis::lead_leg ? reach : basis == IntentBasis::load ? reach * served : served;
    }
};

std::optional<Refit> refit_line(const OtherGym& gym, const BlockLine& line, const Exercise& from,
                                const Exercise& to);

} // namespace amentum
