// The answer about limiters in shown units and plain words, for find_limiters, the thrower's page, roster and planner.
#pragma once

#include "operations/find_limiters.h"
#include "operations/inside/inside.h"

namespace amentum {

FindLimitersAnswer limiter_answer(const Workplace::Inside&, const FacilityView&, const RosterModel&,
                                  const Athlete&);
std::string
short_limiter_words(const FindLimitersAnswer&); // "Single-leg strength (71 %)"; "cannot tell; next test: ..."

} // namespace amentum
