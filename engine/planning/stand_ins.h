// Which exercise of the other gym stands in for each exercise of a block, in all its weeks at once?
//
// The lines of one exercise and one purpose are one group: a main lift stays the same through the block, so that its load
// can rise. Candidates are what kit, age and cautions allow (allowed_exercises.h), heavy for the legs or hard on a tired arm
// only where the first one was, so that the days before and after a start stay what they were. Of these the one with most
//   score = mean over the group's sets of  kept x served x nearness
// at least 0.20, is taken; groups that share a session never take the same exercise, and those that can stay as they are
// choose first, then by sets.
//   nearness  1     the same exercise; the same movement with a band in place of a column
//             0.95  the same lift held otherwise
//             0.80  the same pattern of movement
//             0.60  another one
// Loads that cannot be compared count 0.9. All these numbers are proposals of this project, no source; bands where there is
// no column: common practice, no source.
// What it cannot tell: whether the athlete knows the exercise.
//
// Example: a split squat with a safety bar, in a garage with dumbbells: the same with two dumbbells.
#pragma once

#include "planning/allowed_exercises.h"
#include "planning/refit_line.h"

#include <map>
#include <string>
#include <vector>

namespace amentum {

struct StandIns {
    // For each line of the block: the exercise it is done as; null: nothing serves its purpose here.
    std::vector<const AllowedExercise*> of_line;
    std::vector<std::optional<Refit>> refits; // beside of_line
};

StandIns choose_stand_ins(const OtherGym& gym, const Block& block, const AllowedExercises& allowed);

const Exercise* exercise_in(std::span<const Exercise> catalogue, const std::string& key); // null: not there

} // namespace amentum
