// Which plates does a kit own, and how does each means of loading stack them?
//
// Plates of one mass are one kind, whatever their labels: a pair is two plates of one mass. A bar takes every
// plate twice, once a side; a landmine, a belt and a sled take single plates on one stack; the rest takes
// none.
// Units: ExactMass, whole plates. At most 4 plates hang from a belt (proposal of this project, no source).
//
// Example: six "45 lb plate" on a bar -> {"45 lb plate", 204116566500, 3}
#pragma once

#include "equipment/plate_sums.h"
#include "values/exercise.h"
#include "values/kit.h"

#include <string>
#include <vector>

namespace amentum {

struct Stacking {
    int stacks;         // 2: the plates go on both sides; 1: on one stack; 0: no plates
    const char* ending; // " a side"
    int most_plates;    // on one stack
};

Stacking stacking_of(LoadMeans means);

// Lightest first; `available` is how many may stand on one of so many stacks at once.
std::vector<PlateKind> plates_owned(const Kit& kit, int stacks);

} // namespace amentum
