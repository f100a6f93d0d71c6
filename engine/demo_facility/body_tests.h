// Three of the hall's grown throwers are taped and bent for the posture of their lifts, on their last test day.
//
// Thigh, shank and trunk by tape, two readings; ankle bend with the heel down, both by one rater and tool; the lead knee at
// foot contact from film, three throws. Invented numbers, no random ones: what was simulated before is untouched.
#pragma once

#include "values/record_set.h"

namespace amentum {

// Call when all other readings stand: the last test day is read from them. Nothing for throwers not named here.
void add_body_tests(RecordSet&, const Athlete&);

} // namespace amentum
