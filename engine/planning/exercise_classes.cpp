#include "planning/exercise_classes.h"

#include <algorithm>

namespace amentum {

bool heavy_for_legs(const Exercise& exercise) {
    const bool strength_work = exercise.part == Part::main_lift || exercise.part == Part::assistance;
    const bool legs = exercise.region == Region::legs || exercise.region == Region::whole_body;
    const bool light = exercise.means == LoadMeans::band || exercise.means == LoadMeans::body;
    return strength_work && legs && !light;
}

bool hard_on_tired_arm(const Exercise& exercise) {
    const auto& cautions = exercise.cautions;
    if (std::find(cautions.begin(), cautions.end(), "day_after_pitching") != cautions.end())
        return true;
    const bool overhead = exercise.pattern.starts_with("overhead") || exercise.pattern == "vertical_press";
    return overhead && exercise.part != Part::mobility && exercise.part != Part::trunk;
}

bool hitters_pull(const Exercise& exercise) {
    return exercise.key.starts_with("low_to_high_pull");
}

bool linear_throw(const Exercise& exercise) {
    return exercise.means == LoadMeans::ball && exercise.part == Part::speed &&
           !exercise.pattern.starts_with("rotational");
}

bool kneeling_overhead_throw(const Exercise& exercise) {
    return exercise.means == LoadMeans::ball && exercise.pattern.starts_with("overhead") &&
           exercise.name.find("neeling") != std::string::npos;
}

} // namespace amentum
