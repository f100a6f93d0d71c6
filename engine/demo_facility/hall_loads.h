// What would the hall have loaded for a set, and how many repetitions does that load allow?
//
//   load   the one nearest to  maximum / (1 + repetitions / 30)  that can be made: bar + a pair of plates each 5 lb
//          (two 2.5 lb plates), or two equal dumbbells, 10 to 100 lb each
//   reps   30 (maximum / load - 1), to the nearest whole one: Epley's line backwards [Epley1985]
// Dumbbells in coarse steps may allow more than ten; then the next heavier pair is taken.
// None when no load allows `fewest` to 10 repetitions: who cannot move the empty bar is not tested with it.
#pragma once

#include "values/quantity.h"

#include <optional>

namespace amentum {

enum class HallTool { straight_bar, high_hex_bar, safety_bar, dumbbell_pair };

// Bars as the hall has weighed them, lb.
inline constexpr double straight_bar_lb = 44.6, high_hex_bar_lb = 58.4, safety_bar_lb = 61.5;

struct HallSet {
    Mass load; // total
    int reps;  // to failure
};

std::optional<HallSet> hall_set(HallTool, Mass maximum, int reps_wanted, int fewest);

} // namespace amentum
