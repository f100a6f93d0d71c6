// What the kept blocks ask of a kit, before each load was made to fit it: for "what to buy".
//
// For a line with a load test: target = (mean - 1 standard error of the maximum on the block's first day) x load_share
// x the week's fraction, at most the exercise's heaviest; what hangs from a belt is that less body mass. Only while that
// target still gives the line's load on this kit to within one small step; else, and for every other line, the target
// is the load that stands there: a coach may have changed the line, or a test may have come since.
// What it cannot tell: what a line would have been given on another kit (fewer exercises are left out there).
#pragma once

#include "equipment/kit_purchases.h"
#include "operations/inside/inside.h"

#include <string>
#include <vector>

namespace amentum {

struct PrescribedLoads {
    std::vector<PrescribedLoad> loads;
    std::vector<std::string> blocks; // "Marisol Quay, from 2026-06-01"
};

PrescribedLoads prescribed_loads(const Workplace::Inside&, const FacilityView&, const Kit&);

} // namespace amentum
