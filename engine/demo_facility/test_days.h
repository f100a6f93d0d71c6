// What the test days, throws, seasons and logged sets of one simulated thrower would have been written down as.
#pragma once

#include "demo_facility/simulation.h"
#include "values/record_set.h"

namespace amentum {

void add_test_days(RecordSet&, const Athlete&, const TrueThrower&, Date last_day, std::uint64_t seed);
void add_season(RecordSet&, const Athlete&, const TrueThrower&, Date last_day, std::uint64_t seed);
void add_logged_sets(RecordSet&, const Athlete&, const TrueThrower&, Date last_day, std::uint64_t seed);

// The hall's usual value of a test for this thrower on that day, at z = 0, in SI.
double usual_test_value(const Athlete&, double age, double body_mass_kg, const std::string& test);
double true_test_value(const Athlete&, const TrueThrower&, Date last_day, int day, const std::string& test,
                       int quality);

} // namespace amentum
