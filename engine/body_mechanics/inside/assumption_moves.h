// Moving one assumption of a pose by a multiple of its error: what the bands of poses and of loads are made of.
#pragma once

#include "body_mechanics/pose_band.h"

namespace amentum {

// Those that this set-up rests on, in the order of words_of<Cause>.
std::vector<Cause> causes_of(const Setup& setup);

double error_of(Cause cause, const Body& body, const Setup& setup); // share, m: see pose_band.h

// Adds `amount` (a share or metres) to the assumption.
void move_assumption(Cause cause, double amount, Body& body, Setup& setup);

} // namespace amentum
