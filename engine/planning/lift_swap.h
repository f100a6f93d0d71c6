// Which load of another exercise asks the same by usual maxima, and how directly does it serve the same quality?
//
//   same test behind both   load = moved x share(to) / share(from)          the athlete's own maximum cancels
//   two tests               load = moved / max(from) x max(to)              both known, mean - 1 standard error
// moved is what the lift moves: the load, with body mass in a pull-up. share is the catalogue's load_share: published where
// its row names a source with numbers, otherwise a proposal of this project.
//   standard error = load x sqrt(0.10^2 + (se/value)^2 of each of two tests)
// The 0.10 is how far one athlete's ratio of two lifts is from the usual one (proposal of this project, no source).
//   served = sum over qualities of min(share(to), share(from)) / sum of share(from)    what both give, of what the first gave;
//            x 0.6 where slow work stands in for fast or fast for slow (proposal of this project, no source)
// Units: kg. None when no test stands behind one of them, or two tests and one is missing: the loads cannot be compared.
// What it cannot tell: this athlete's own ratio. A published ratio of low to high hex-bar handles was not found: the two
// never share a maximum.
//
// Example: share 1.0 to share 0.8, 100 kg -> 80 +- 8 kg
#pragma once

#include "planning/plan_block.h"
#include "planning/retargeted_line.h"

namespace amentum {

inline constexpr double error_of_usual_share = 0.10, share_at_other_pace = 0.6;

// What is moved: the load itself, or body and load. None when body mass is needed and not known.
std::optional<Mass> moved_mass(const BlockRequest& request, const Exercise& exercise, Mass load);

// In moved mass of `to`.
std::optional<EqualLoad> usual_equal(const BlockRequest& request, const Exercise& from, Mass load,
                                     const Exercise& to);

// 0 when `from` serves the purpose and `to` does not.
double share_served(const std::string& purpose, const Exercise& from, const Exercise& to);
// The same of one quality; 1 where the first does not serve it.
double share_served_of(const std::string& quality, const Exercise& from, const Exercise& to);

} // namespace amentum
