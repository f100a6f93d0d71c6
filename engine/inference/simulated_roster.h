// A roster of the same athletes, days and tests with other results: drawn from the joint model at given numbers.
//
// Levels, growth, walks, sessions and errors are drawn anew as joint_model.h writes them, with the fit's numbers, but for the
// slopes within athletes, which are given: for simulation-based calibration the truth is then known.
// The same seed draws the same roster. What it cannot tell: anything the model does not hold.
#pragma once

#include "inference/joint_model.h"

#include <cstdint>
#include <span>

namespace amentum {

// within: of each predictor, in the readings' units.
RosterData simulate_roster(const RosterData& design, const RosterMode& mode, std::span<const double> within,
                           std::uint64_t seed);

} // namespace amentum
