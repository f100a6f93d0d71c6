// Which load, how many repetitions, how many left in reserve, on this kit, in this week?
//
//   target = (mean - 1 standard error of the maximum) x load_share x fraction of the week, at most `heaviest`
//   load   = the heaviest the kit makes that is not above the target
//   reps   = possible at that fraction, by Epley's line [Epley1985], - reserve wanted
// Repetitions before load [ACSM2009]: when the kit has no heavier load, or its next is more than 10 % above
// this one, or this one is more than 10 % below the target, the repetitions follow the load really made; the
// reserve falls by one a week instead of the load rising.
// Pull-ups: the maximum is body mass and added load; what is added is target - body mass. Below body mass the
// repetitions follow body mass alone while at least three can be done with the reserve; else the lift is
// assisted.
// No estimate: no load; the first week finds one that leaves the reserve.
// Balls: the lightest of the range under the youth rules, otherwise the middle one; kneeling overhead throws
// 4 to 6 lb when the kit has one in that range [common practice, no source]. Bands: by the colour written on
// them.
// Units: kg. What it cannot tell: how the athlete feels today; the reserve, not the load, is the prescription
// then.
//
// Example: maximum 150 +- 5 kg, 80 % -> target 116 kg; bar 20 kg and pairs 25, 20, 2.5 -> 115 kg, 5 reps, 2
// in reserve.
#pragma once

#include "planning/allowed_exercises.h"
#include "planning/kit_loads.h"
#include "planning/repetitions.h"

#include <optional>
#include <string>

namespace amentum {

struct LoadedSets {
    int reps;
    std::optional<double>
        intensity; // fraction of the estimated maximum: aimed at, or of the load made when the kit is coarse
    std::optional<double> reserve;
    std::optional<Mass> load;
    std::string words;
    std::string shaped_by; // which limit shaped it, for the reason; may be empty
};

LoadedSets plan_sets(const BlockRequest& request, const KitLoads& loads, const Exercise& exercise,
                     const WeekOfWave& week);

double rest_minutes(const Exercise& exercise, Loading loading);

} // namespace amentum
