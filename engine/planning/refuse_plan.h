// Why there is no block, in a coach's words: which limits cannot hold together, and how far each alone would have to give.
//
// Safety (cautions, equipment, age, days near a start) is never offered for relaxing.
// What it cannot tell: which of the limits the coach would rather give up.
#pragma once

#include "planning/allowed_exercises.h"
#include "planning/block_problem.h"

namespace amentum {

Refusal refuse_no_exercise(const BlockRequest&, const AllowedExercises&);
Refusal refuse_no_day(const BlockRequest&);
Refusal refuse_stopped();
Refusal refuse_not_found();
std::optional<Refusal> refuse_conflict(const BlockProblem&); // none: no conflict is seen

} // namespace amentum
