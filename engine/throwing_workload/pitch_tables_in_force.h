// Which tables of limits hold: those that came with the program, or those kept here?
//
// Of every organisation and sport the kept table with the highest number takes the place of all its rows, whatever their year;
// a kept table without rows takes the organisation back to the rows that came with the program. Order: as the tables that came
// with the program, a table's new rows where its first row stood; then organisations that only stand here, by number.
// What it cannot tell: whether an organisation plays by it.
//
// Example: table 3 of the Harbour league is edited as table 5 -> only the rows of table 5 hold for the Harbour league.
#pragma once

#include "values/pitch_table.h"

#include <span>
#include <vector>

namespace amentum {

std::vector<PitchRule> pitch_tables_in_force(std::span<const PitchRule> built_in,
                                             std::span<const PitchTable> kept);

} // namespace amentum
