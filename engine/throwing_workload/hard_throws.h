// Inner step of throw_account.h: the thrower's own best speeds of one log, by ball, read once.
//
// Best of a ball: the highest mean speed of entries whose ball mass is within 1 g of it; entries without a ball mass stand by
// themselves. Two entries within 1 g of a third may be 2 g apart: every ball is asked by its own gram, so order changes nothing.
// Units: metres a second. Range: entries of one athlete. Time: n log n for n entries of few balls.
// Example: 80 mph with a ball of 145 g and 82 mph with one of 145.5 g: 82 mph is the own best with both.
#pragma once

#include "values/season.h"

#include <map>
#include <span>
#include <vector>

namespace amentum {

class OwnBests {
public:
    explicit OwnBests(std::span<const ThrowEntry* const> entries);
    std::optional<Speed> with(const std::optional<Mass>& ball_mass) const; // none: nothing was read with it

private:
    std::map<double, Speed> by_grams_;
    std::optional<Speed> without_mass_;
};

} // namespace amentum
