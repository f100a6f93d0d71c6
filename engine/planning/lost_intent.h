// What is lost of a line's intent in the other gym, and what makes up for some of it: two whole sentences.
//
// The loss names what was compared: the lead leg's demand, the load that would ask the same, or only how directly the
// exercise serves the purpose. What to do: tempo, pauses and repetitions (common practice, no source), or the smallest pair
// of usual dumbbells that reaches the load aimed at (steps of 5 lb to 100 lb, or 2.5 kg to 50 kg: common practice, no
// source); above that no pair helps, because grip gives out first (common practice, no source).
// What it cannot tell: whether slower repetitions make up for a lighter load; they are what is left to try.
//
// Example: "Pair of 50 lb dumbbells: 61 % of what 225 lb asks of the lead leg." and "Three counts down, a pause of two at
// the bottom, 12 repetitions instead of 5; or buy a pair of 90 lb dumbbells."
#pragma once

#include "planning/refit_line.h"
#include "planning/retargeted_line.h"

namespace amentum {

inline constexpr double worth_saying = 0.995; // kept above it: no loss is spoken of

// Sets kept_band, loss and to_do of a line whose refit, change, reach and kept stand.
void describe_loss(const OtherGym& gym, RetargetedLine& line, const Exercise& from, const Exercise* to);

// The reason on the line of the new block, one sentence.
std::string reason_in_other_gym(const OtherGym& gym, const RetargetedLine& line, const Exercise& from,
                                const Exercise& to);

// The smallest usual dumbbell of which a pair (or one) reaches `wanted`; none above 100 lb or 50 kg.
std::optional<Mass> smallest_dumbbell(MassUnit unit, LoadMeans means, Mass wanted);

} // namespace amentum
