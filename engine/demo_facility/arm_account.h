// The account of the arms of the invented hall: days known to be without throws, teams, innings, pain, steps back.
//
// Days without throws are written down on every day that has none, except: three throwers forget about two of five; and one
// fortnight in October nobody was asked, which stays unknown. The last day itself is not over and is not written down.
// Youths play for two teams with rules of different organisations; grown throwers by rules this program does not know.
// Outs follow from pitches, about 18 an inning. One fielder's wrist was sore, was cleared, and a clinician's steps run; another
// fielder's knee is open. Names and numbers are invented; random ones from a stream of their own: what was simulated before is
// untouched.
#pragma once

#include "values/record_set.h"

#include <cstdint>

namespace amentum {

// Call when all throws stand.
void add_arm_account(RecordSet&, Date last_day, std::uint64_t seed);

} // namespace amentum
