// What in this block must be stopped or looked at before it goes to the floor?
//
// Independent of whatever wrote the block: every rule is worked out again from the block, the kit, the
// catalogue, the athlete and the calendar. The rules, one file each:
//   block_loads       exercises known; equipment in the kit; every load makeable to the gram; inside the
//                     exercise's own bounds; straight-line ball throws at most 8 lb (3.62873896 kg)
//   block_cautions    nothing a caution speaks against, unless the caution may be overridden and a coach's
//                     reason of at least ten characters is kept
//   block_calendar    no session on starts and days off, a look at games and travel; nothing heavy for the
//                     legs on the two days before a start (48 h); no overhead work on the day after
//   block_youth       the exercise's youngest age; under 14: at most three days a week, not next to each
//                     other, at most 3 sets, 6 repetitions or more in loaded lifts, no maximal attempts
//   block_structure   sets and repetitions positive; minutes kept; dates inside their week; a main lift kept
//                     three weeks; a week of reduced volume in every six
//   block_pain        nothing an open pain entry blocks (pain_regions.csv); nobody answers for it
// Calendar and pain rules look from `today` on; the past is only read. Each finding names its source or says there is
// none.
// A stop whose may_answer is coach, answered with a kept reason, warns instead (answered_stops.h): heavy legs before a
// start, a session too long; of adults alone, a session on a day off or a start, and two sessions on one day.
// Order: by week, session and order; findings about the whole block last.
// What it cannot tell: whether the block is any good, or the athlete fit to train; what nobody wrote down.
//
// Example: a 10 lb overhead throw in week 1 -> one finding, "linear_throw_too_heavy", that stops.
#pragma once

#include "guard_rails/care_record.h"
#include "guard_rails/finding.h"
#include "values/athlete.h"
#include "values/block.h"
#include "values/exercise.h"
#include "values/kit.h"
#include "values/season.h"

#include <span>

namespace amentum {

std::vector<Finding> check_block(const Block& block, const Athlete& athlete, const Kit& kit,
                                 std::span<const Exercise> catalogue, std::span<const Caution> cautions,
                                 std::span<const CalendarEntry> calendar, std::span<const Override> overrides,
                                 Date today, const CareRecord& care = {});

} // namespace amentum
