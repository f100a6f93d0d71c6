#include "planning/exercise_classes.h"

namespace amentum {

bool heavy_for_legs(const Exercise& exercise) {
    const bool strength_work = exercise.part == Part::main_lift || exercise.part == Part::assistance;
    const bool legs = exercise.region == Region::legs || exercise.region == Region::whole_body;
    return strength_work && legs && exercise.means != LoadMeans::band && exercise.means != LoadMeans::body;
}

bool loads_arm_overhead(const Exercise& exercise) {
    const bool overhead = exercise.pattern.starts_with("overhead") || exercise.pattern == "vertical_push";
    return overhead && exercise.part != Part::mobility && exercise.part != Part::trunk;
}

bool linear_throw(const Exercise& exercise) {
    return exercise.means == LoadMeans::ball && exercise.part == Part::speed &&
           !exercise.pattern.starts_with("rotational") && !exercise.pattern.starts_with("scoop");
}

bool kneeling_overhead_throw(const Exercise& exercise) {
    return exercise.means == LoadMeans::ball && exercise.pattern.starts_with("overhead") &&
           exercise.name.find("neeling") != std::string::npos;
}

}  // namespace amentum
