// One line of the next session: as it was written, as it is now, and every reason for a change.
//
// In this order; each step starts from what the one before left:
//   level      after missed sessions the load, repetitions and reserve of an earlier week (next_session.h)
//   found      a line that was to find its load takes what last time's sets allow by Epley's line, at most 10 % above
//              the load lifted then [Epley1985] [ACSM2009]
//   reserve    repetitions and reserve of last time against what was written (next_load.h): up, down, or as written.
//              Up only as far as the middle of today's estimate carries the written share of it, never a load lifted last
//              time plus more than 10 %, and not at all after missed sessions. Repetitions before load, when the
//              next load of the kit is above what the reserve pays for [ACSM2009]
//   estimate   without such sets: today's lower side x the written share; as written within 2 %, at most 10 % up
//   ball       a slower ball (ball_speed_fall.h): a lighter one, or no more throws today
//   today      sets already done today: a failed set or less in reserve lowers the rest; nothing rises within a session
// Loads are made not above the target and inside the exercise's own bounds; sets are never added.
// What it cannot tell: how the athlete feels; the reserve, not the load, is the prescription.
#pragma once

#include "planning/kit_loads.h"
#include "planning/plan_block.h"
#include "planning/wave.h"

#include <string>
#include <vector>

namespace amentum {

struct WhyLine {
    std::string sentence;
    std::string source; // keys of docs/sources.md, or "proposal of this project, no source"
};

struct NextLine {
    BlockLine written;
    BlockLine now;
    std::vector<const SetDone*> last; // sets of the last day this exercise was done before
    std::vector<const SetDone*> today;
    std::vector<WhyLine> why; // never empty: an unchanged line says so
    bool changed;
    int sets_left; // of `now`, after those done today
};

// Sets of one exercise in this block, seen from the line in hand.
struct LineHistory {
    const BlockLine* last_written = nullptr; // the line the sets of `last` belong to
    std::vector<const SetDone*> last;
    std::vector<const SetDone*> before;
    std::vector<const SetDone*> today;
};

// The week whose intensity holds: the line's own, or an earlier one after missed sessions.
struct LevelOfSession {
    int week;
    WhyLine why;       // empty when it is the line's own
    bool after_missed; // sessions enough that nothing rises today
};

struct LineCase {
    const BlockRequest& today; // athlete, kit, catalogue, today's maxima and body mass
    const KitLoads& loads;
    const Block& block;
    const BlockLine& written;
    const Exercise& exercise;
    const LevelOfSession& level;
    LineHistory history;
};

NextLine next_line(const LineCase&);

// "4 x 5, hex bar + 45, 25 a side (225 lb), leaving 2"
std::string describe_sets(const BlockLine&, const Exercise&, MassUnit);
// "2026-06-01: 225 lb x 5, 5, 4, leaving 2, 2, 0"
std::string describe_done(const std::vector<const SetDone*>&, MassUnit);

} // namespace amentum
