// The coach's own words on a kept block: which changes hold, what they ask of a plan, how they read.
//
// A later word on the same exercise and session takes the place of an earlier one. "Out of every session", then held in one:
// it stays out of the others.
#pragma once

#include "operations/inside/inside.h"
#include "planning/plan_block.h"
#include "values/block_change.h"

#include <string>
#include <vector>

namespace amentum {

// Not taken back, and made since the block was last planned anew; oldest first.
std::vector<BlockChange> changes_in_force(const std::vector<BlockChange>& all, const BlockId&);

// The last change that is not taken back, also when it is that the block was planned anew; null: there is none.
const BlockChange* last_change(const std::vector<BlockChange>& all, const BlockId&);
int next_change_number(const std::vector<BlockChange>& all, const BlockId&);

std::vector<OwnLine> own_lines(const std::vector<BlockChange>& in_force, int sessions_per_week);

// "Pull-up stays in session 2 with 3 sets."
std::string change_words(const BlockChange&, const ReferenceTables&);

// In how many weeks a line stands in a session: the sessions of the week in which it stands in half of the weeks or more, else
// the one in which it stands most often; none: it is not in the block.
std::vector<int> sessions_with(const Block&, const std::string& exercise);

} // namespace amentum
