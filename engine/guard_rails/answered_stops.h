// Which stops has a coach answered for, and whose stops are beyond any coach?
//
// A stop whose may_answer is coach, with a StopAnswered of this athlete, its code and its day, recorded up to `today`, by a named
// coach, with a reason of at least ten letters that are no blanks: it warns from then on, and its sentence says who answered and
// why. All else comes back unchanged: no answer reaches a stop whose may_answer is nobody.
// Rest of the young is nobody's to shorten: athletes under 18 on that day, and of level youth or school at any age. 18: proposal of
// this project, no source.
// What it cannot tell: whether the reason is a good one.
//
// Example: an adult's rest_not_over of 2026-03-04, answered by "Rui" with "national final, physician asked" -> warns.
#pragma once

#include "guard_rails/finding.h"
#include "values/arm_care.h"
#include "values/athlete.h"

#include <span>

namespace amentum {

MayAnswer who_answers_for_rest(const Athlete& athlete, Date day);

std::vector<Finding> with_answers(std::vector<Finding> findings, const AthleteId& athlete,
                                  std::span<const StopAnswered> answers, Date today);

} // namespace amentum
