// What is a plan worth, what does it cost, and which limits does it break? The plain way: everything is added up from
// the plan each time, in the order of block_problem.h. The search keeps running sums instead, the mixed-integer model
// has rows; tests hold the three together.
//
// Breaches are named in the coach's words and measured, so that one list serves the check of a plan, the sentence "one
// more set is held back by ..." and the explanation of a conflict.
// Limits of sets, minutes and the ramp look at the template as it is written, whatever a start takes away in one week:
// otherwise a game week would forbid the return to normal. In a start week the sets heavy for the legs that do stand
// there are counted. A line that stands on no day of its meso is a breach.
// What it cannot tell: whether the limits are right.
#pragma once

#include "planning/block_problem.h"

#include <string>
#include <vector>

namespace amentum {

// The limits a coach can name. The order is that in which they are offered for relaxing, least sacred first; safety
// (spared legs and arm, age, cautions, equipment) is no choice of the problem at all and so is never offered.
enum class LimitGroup {
    minutes,       // of a session
    region_sets,   // weekly hard sets of a region
    arm_sets,      // weekly sets hard on the arm
    ramp,          // weekly sets over those of the meso before
    main_lift,     // one in every session where one may stand, and at most as many as allowed
    lines,         // exercises in a session
    once,          // a pattern once a session, an exercise twice a week
    day_structure, // heavy legs in a session and on neighbouring days
    own_lines,     // what the coach has pinned or barred
    least_dose,    // what the coach asks for at least
    sets_of_line   // fewest and most sets of one exercise
};
inline constexpr int limit_groups = 11;
const char* limit_words(LimitGroup group); // "the minutes of a session"

// Heavy leg work in the week of a start is safety: checked, never offered.
struct Breach {
    std::optional<LimitGroup> group; // none: safety
    int meso;
    std::optional<int> session;
    std::optional<int> choice;
    double by;         // how far beyond the limit, in its own unit: minutes, sets, lines
    std::string words; // "session 2 has 64 minutes, at most 60"
};

struct PlanPrice {
    std::vector<double> share_of_quality; // by quality: sum over mesos of f, averaged over the full weeks
    std::vector<double> weekly_sets;      // by quality, averaged over the full weeks
    double worth = 0;                     // points
    double fatigue = 0;
    double lines = 0;
    double ready = 0;
    double change = 0;
    double total() const { return worth - fatigue - lines - ready - change; }
};

PlanPrice price_plan(const BlockProblem&, const PlanSets&);
// Of a plan that stands, or of one that is only thought of: "has 62 minutes", "would have 62 minutes".
enum class Mood { stands, thought_of };
// Empty: every limit is kept.
std::vector<Breach> breaches(const BlockProblem&, const PlanSets&, Mood = Mood::stands);

} // namespace amentum
