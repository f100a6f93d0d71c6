// By whose tables does this arm pitch on a day? Those of every organisation its teams play by, each once.
//
// A place in a team holds from its first day to its last, both included. Without a place that names an organisation, the
// first organisation of the sport in the tables holds, and `teams` is empty: it was assumed, and the words say so.
// Range: tables in force (pitch_tables_in_force.h); places of any athletes. Javelin and other sports without a table: none.
// What it cannot tell: teams nobody wrote down.
//
// Example: school team under one organisation, summer team under another: two tables, all pitches count in both.
#pragma once

#include "values/athlete.h"
#include "values/pitch_table.h"

#include <span>
#include <string>
#include <vector>

namespace amentum {

struct ArmTable {
    std::string organisation;
    std::vector<PitchRule> rows;    // of the sport
    std::vector<std::string> teams; // that play by it; empty: nobody said, assumed
};

std::vector<ArmTable> tables_of_arm(std::span<const PitchRule> in_force, std::span<const TeamPlace> places,
                                    const Athlete& athlete, Date day);

} // namespace amentum
