// What differs between a block before and after a change, and why; the same difference in several weeks is said once.
#pragma once

#include "operations/adjust_block.h"
#include "operations/inside/inside.h"
#include "values/block_change.h"

#include <set>
#include <vector>

namespace amentum {

// The planned block, as little changed as can be: weeks of `begun` are those of `before`; a line that keeps its exercise and
// sets in a session keeps its load, repetitions and words; a session that keeps all its lines keeps their order.
Block as_little_changed(const Block& before, Block planned, const std::set<int>& begun);

// In the order of week and session. `change`: what the coach asked for; `undone`: it is taken back.
enum class MoveDirection { made, undone };
std::vector<MovedLine> moved_lines(const Block& before, const Block& after, const BlockChange& change,
                                   MoveDirection, const ReferenceTables&);

} // namespace amentum
