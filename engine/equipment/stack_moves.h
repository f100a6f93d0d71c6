// How many plates are handled on one side to go from one load to the next.
//
// Plates leave a sleeve in the reverse of the order they went on, so only the innermost plates common to both
// stacks may stay:  moves = |A| + |B| - 2 x (length of the common inner part).
// It is a distance between stacks (a tree metric): never negative, the same both ways, and no detour is
// shorter.
// Source: counted by hand; proposal of this project.
// Units: plates of one side; both sides of a bar cost twice that.
// What it cannot tell: the time, which depends on how heavy the plates are and who helps.
//
// Example: 25, 15 -> 25, 15, 2.5: one plate on. 20 -> 25, 15: one off, two on, three moves.
#pragma once

#include "equipment/plate_sums.h"

#include <vector>

namespace amentum {

int stack_moves(const std::vector<PlatesOnSide>& from, const std::vector<PlatesOnSide>& to);

} // namespace amentum
