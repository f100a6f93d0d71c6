// What is each session of a meso made of, before minutes and days?
//
// A session is an ordered wish list: lines are asked for one after another until the minutes run out
// (dose.h), so the order says what matters most. It does not depend on the minutes.
//   the main lift; two of the four kept ready; speed work; the second main lift; the other two kept ready;
//   then assistance, more speed, shoulder and trunk work, by worth.
// Kept ready every week whatever limits: shoulder (with pulling), trunk, hips, length overhead. Odd sessions
// ask first for shoulder and hips, even ones for trunk and length, so that short sessions share the four.
// At most one main lift and one assistance lift heavy for the legs a session, on every second session from
// the first; the others train the upper body and can stand next to a start. Among candidates the one of the
// highest worth wins, after these factors (ours):
//   0.6 for each time its pattern was taken this week, 0.5 for each time it was taken itself, 1.2 when its
//   maximum is known (main lifts); main lifts 0.95, the rest 0.9, when taken in the meso before.
// Every line that is heavy for the legs or hard on a tired arm has a stand-in that is neither, not longer,
// for days near a start.
// Order of choice is the catalogue's where worth is equal: the same request gives the same block.
#pragma once

#include "planning/allowed_exercises.h"

#include <vector>

namespace amentum {

struct TemplateLine {
    const AllowedExercise* what;
    int first_sets; // asked for at once
    int most_sets;
    bool always;                     // before any optional line
    const AllowedExercise* stand_in; // may be null
};

struct SessionTemplate {
    std::vector<TemplateLine> lines; // most wanted first
    bool heavy_legs;
    bool hard_on_arm;
};

int most_sets(Part part, Loading loading);

// sessions 1 to 5; `meso_before` is empty for the first meso.
std::vector<SessionTemplate> choose_exercises(const BlockRequest& request, const AllowedExercises& allowed,
                                              int sessions, const std::vector<SessionTemplate>& meso_before);

} // namespace amentum
