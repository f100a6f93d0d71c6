// One day on which a grown thrower of the hall throws the same way with three balls: a line over ball masses.
//
// Standing overhead throws with 4, 6 and 8 lb, five each. The day moves all balls alike, unlike the kneeling throws of the
// other test days; speed falls with mass to a power of the thrower's own. The errors are those of true_tests.
#pragma once

#include "demo_facility/simulation.h"
#include "values/record_set.h"

#include <optional>
#include <string>

namespace amentum {

inline constexpr int ball_day_before_last = 9; // days before the hall's last day
inline constexpr double standing_over_kneeling =
    1.1; // speed of the standing throw over the kneeling one, same ball

// Its mass in pounds, when the test is one of these throws.
std::optional<double> standing_ball(const std::string& test);

// The thrower's true power of mass, -0.19 to -0.45.
double true_ball_power(const Athlete&);

// Nothing for those below 16 years, those who train where there is one ball only, and those seldom tested.
void add_ball_day(RecordSet&, const Athlete&, const TrueThrower&, Date last_day, std::uint64_t seed);

} // namespace amentum
