// How many sets of each line, in the minutes there are?
//
//   minutes of a session = sum over its lines of  setup_minutes + sets x set_minutes
// Lines that are always wanted come first, in their order, two sets each. Then single sets (or two of a new
// line) go by highest averages, worth / (2 sets + 1) with a new line counted as if it had its two already, as
// in the Sainte-Lague rule for seats [SainteLague1910], so that sets are shared in proportion to worth: the
// leading limiters get most. It ends at the first that does not fit.
// Because the order does not depend on the minutes, more minutes never take a set away from any line.
// In a reduced week the sets are halved with the rest carried from line to line, at least one a line.
// What it cannot tell: how long this athlete really needs.
//
// Example: reduced_sets({3, 3, 2}) == {2, 1, 1}
#pragma once

#include "planning/choose_exercises.h"

#include <vector>

namespace amentum {

// Sets of every line of the template, in its order; 0: no room.
std::vector<int> dose_session(const SessionTemplate& session, double minutes);

std::vector<int> reduced_sets(const std::vector<int>& sets);

} // namespace amentum
