// Which lift of body_mechanics is an exercise of the catalogue, and how is it usually set up for this body?
//
// By pattern, key and means of data/exercises.csv. None for what body_mechanics does not solve (hinges without a bar on the
// floor, front-foot-raised and side lunges, squats with dumbbells at the sides, everything above the hips). Settings: usual
// ones (usual_setup.h); the handle of a hex bar as high as this kit's own bar has it.
// What it cannot tell: how this athlete really stands; solve_setup takes taped lengths.
#pragma once

#include "body_mechanics/setup.h"
#include "planning/leg_demand.h"
#include "values/facility.h"
#include "values/kit.h"

namespace amentum {

struct LiftOfExercise {
    Lift lift;
    Hold hold;
};

std::optional<LiftOfExercise> lift_of(const Exercise&);

// Of every exercise that is a lift; loads are left at none.
SetupsOfExercises usual_setups(const Body&, std::span<const Exercise>, const Kit&, const Facility&);

} // namespace amentum
