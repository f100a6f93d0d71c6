// How an annealing search cools, and which losses it takes on the way [Kirkpatrick1983].
//
// A loss is taken with the chance exp(-loss / temperature): where loss <= temperature ln(1 / u), u drawn from the middles
// of 1,024 equal parts of (0, 1). Plain arithmetic throughout, so that no library's logarithm decides what is taken.
// Units: points.
#pragma once

#include "planning/inside/seeded_stream.h"

namespace amentum {

inline constexpr int steps_of_cooling = 200;

double drawn_threshold(SeededStream& stream); // ln(1 / u)

// The factor that leads from one number to the other when it is taken once a step; both above 0.
double factor_a_step(double from, double to);

} // namespace amentum
