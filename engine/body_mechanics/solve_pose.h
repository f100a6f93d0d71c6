// Which posture balances this set-up, and what do the joints do in it?
//
// Closures: split_stance.h (two feet one behind the other), two_feet.h (squats, deadlifts), hanging.h (pull-up). Statics:
// the front foot carries W - R_y at the centre of pressure asked for; whole-body balance
//
//     p_P.x = ( sum_i m_i g x_i - x_R R_y + y_R R_x ) / ( W - R_y )
//
// solves the one angle left free; joint moments by solve_chain from the foot up.
// Refusals: missing_field, over_determined, method_does_not_apply (a setting the lift does not have), out_of_range,
// no_such_posture (the sentence says what stops it: out of reach, rear knee below the floor, balance cannot be met).
// What it cannot tell: see docs/methods/body_mechanics.md; speed, muscle forces, sideways balance, pain.
// Example: a man of 80 kg and 1.80 m, 60 kg on the back, stance 0.80 m, pad 0.40 m, thigh level, trunk 20 degrees: shin
// 33.4 degrees, knee 223 N m, hip 243 N m, hip share 0.522
#pragma once

#include "body_mechanics/body.h"
#include "body_mechanics/pose.h"
#include "values/refusal.h"

namespace amentum {

Result<Pose> solve_pose(const Body& body, const Setup& setup);

} // namespace amentum
