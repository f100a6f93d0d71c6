// Why is this line here? One sentence: what it serves, why in this place, which limit shaped it.
//
// "Goes with" and never "causes": a limiter's gain is an association with an interval, in the words that came
// with it.
// Example: "Leading limiter, single-leg strength, which goes with +0.8 mph (80 %: 0.1 to 1.6); main lift kept
// in weeks 1 to 4; 80 % of the lower side of the estimate, made not above."
#pragma once

#include "planning/place_sessions.h"
#include "planning/plan_sets.h"

#include <string>

namespace amentum {

struct LineStory {
    const AllowedExercise& what;
    const AllowedExercise* stands_in_for; // null: the line is the one that was chosen
    std::string why_stand_in;
    const PlacedSession& place;
    const WeekOfWave& week;
    int first_week; // of the meso
    int last_week;
    const LoadedSets& sets;
    int order; // in the session: its first line, and what the move is about, say why it was moved
};

std::string describe_reason(const BlockRequest& request, const QualityWorth& worth, const LineStory& story);

} // namespace amentum
