// Is this table of limits whole? Bands complete, rising, without gap; ages without overlap or hole.
//
// Every fault names the row (by its ages), the column, what stands there and what is allowed. Checked on saving; the tables that
// came with the program pass.
//   one table        one organisation, year and sport; at least one row
//   ages             0 to 99, low <= high; no overlap; from the lowest to the highest without a hole
//   counts           daily_max 1 to 400; bands rising, without an empty band between two, and the last one at daily_max
//                    (a table may have no bands at all); game_max at most daily_max; third_day_max 0 to daily_max
//   the rest         days running 1 to 7; innings 1 to 400 a year; months 0 to 12, those running at most those altogether;
//                    age_month and age_day both or neither, a day every year has; catching 1 to 400 pitches, 1 to 20 innings
// What it cannot tell: whether an organisation really plays by it.
#pragma once

#include "values/pitch_table.h"
#include "values/refusal.h"

#include <span>

namespace amentum {

Result<Done> check_pitch_table(std::span<const PitchRule> rows);

} // namespace amentum
