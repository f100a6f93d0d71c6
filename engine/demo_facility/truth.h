// The truth of the invented hall as text: what made the records, in JSON with keys in alphabetical order.
//
// docs/guide/demo_facility.md says what each key is.
#pragma once

#include "demo_facility/simulation.h"

#include <cstdint>
#include <string>
#include <vector>

namespace amentum {

// The quality whose usual twelve-week gain would bring this thrower most velocity, by the simulation's own effects.
struct TrueLimiter {
    const char* quality;
    double gain_ms;
};
TrueLimiter true_limiter(const TrueThrower&); // on the last day

std::string describe_truth(const std::vector<Athlete>&, const std::vector<TrueThrower>&, std::uint64_t seed,
                           Date last_day);

} // namespace amentum
