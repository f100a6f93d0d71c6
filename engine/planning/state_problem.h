// From a request to numbers: which exercises may be chosen where, on which days their sets stand, which limits hold.
//
// Sessions alternate: on the first and every second one (on both, when there are two) the legs may be loaded heavily; the
// others train the upper body and can stand next to a start. The days are fixed first (place_sessions.h), so the search
// knows which sets a start takes away. A line the coach holds may stand in any session.
// Choices are the allowed exercises in their order; serves = share of the work x preference (allowed_exercises.h).
// Refuses: a held line whose exercise the athlete may not do here, with the reason; a session that is not there.
// What it cannot tell: on which day a session would serve best.
#pragma once

#include "planning/allowed_exercises.h"
#include "planning/block_problem.h"
#include "planning/place_sessions.h"
#include "planning/weekly_limits.h"

namespace amentum {

struct StatedProblem {
    BlockProblem problem; // choice i is allowed.list[i]
    std::vector<WeekOfWave> wave;
    std::vector<PlacedWeek> placed; // by week
    int sessions;
};

// The group kept ready every week that an exercise belongs to: 0 pulling or shoulder, 1 trunk, 2 hips, 3 length overhead.
std::optional<int> ready_group(const Exercise& exercise);
const char* ready_group_name(int group);

Result<StatedProblem> state_problem(const BlockRequest&, const AllowedExercises&, const QualityWorth&);

// The sets of a written block's full weeks as a plan: the most sets a line has in a full week of its meso.
PlanSets plan_of(const StatedProblem&, const Block&);

} // namespace amentum
