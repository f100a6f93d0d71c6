// Can this entry of throws be, and may it stand on its day beside the others?
//
//   none       a day known to be without throws: count 0, the first occasion, and nothing else but soreness and a note;
//              it stands alone on its day
//   fielding   count 1 to 400, or 0 with outs caught behind the plate
//   others     count 1 to 400
//   outs (0 to 60, innings x 3) and before_last_batter (0 to count) belong to a game, outs_caught (0 to 60) to fielding;
//   occasion 1 to 9
// The limits are proposals of this project, no source. Refuses with the field of ThrowEntry, the value and what is allowed;
// the ranges of effort, speed, distance, ball and soreness are the readers' (limits.h).
// What it cannot tell: whether the throws were counted well.
//
// Example: 35 throws in the bullpen on a day held as `none` -> "... 35 throws (bullpen) and a day without throws (none) cannot
// both stand on 2026-03-02 ..."
#pragma once

#include "values/refusal.h"
#include "values/season.h"

#include <span>

namespace amentum {

Result<Done> check_throw_entry(const ThrowEntry& entry);

// `others`: entries of the same athlete; those of another day, and the one of the same identity, do not matter.
Result<Done> check_day_of_throws(const ThrowEntry& entry, std::span<const ThrowEntry> others);

} // namespace amentum
