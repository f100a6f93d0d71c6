// A change of a block as it was asked for: which exercise, where it stands, and whether the block is so already.
#pragma once

#include "operations/adjust_block.h"
#include "operations/inside/own_words.h"

#include <set>

namespace amentum {

// Refuses an unknown step, exercise or session, and a swap of an exercise with itself. Exercises by key or by name.
Result<BlockChange> change_asked(const Workplace::Inside&, const FacilityView&, const Block&,
                                 const AdjustBlockRequest&);

// The same word as one that holds, with none on its exercises since.
bool holds_already(const std::vector<BlockChange>& in_force, const BlockChange& asked);

// What gives way must stand where it is to give way.
Result<Done> check_stands(const BlockChange&, const Block&, const ReferenceTables&);

// Is the open part of the block as the word asks already? Then the word is kept, and nothing is planned.
bool block_has_it(const BlockChange&, const Block&, const std::set<int>& begun_weeks, const Athlete&);

} // namespace amentum
