// Where does the load sit on the body, and where are the arms?
//
// A load on the trunk: `along` of the trunk's length from the hip, `ahead` of its line, square to it; then `drop` straight
// down. Hanging: straight down from the shoulder by the arm's length to the grip. In the hands: at the bar, straight arms.
// Arms that hold something on the trunk weigh at 0.85 of its length, `arms_ahead` of its line.
//   straight_bar 0.97, -0.05 m   safety_bar 0.97, +0.05 m   camber_bar as straight_bar, 0.30 m lower
//   front_bar 1.00, +0.07 m      goblet 0.80, +0.20 m       belt: below the hips
// All of them proposals of this project, no source: measure the bar's own offset and give it as load_ahead. Which holds a
// lift is done with: common practice, no source.
#pragma once

#include "body_mechanics/setup.h"

#include <span>

namespace amentum {

enum class ArmsAt { trunk, hanging, bar };

struct HoldPlace {
    double along; // of the trunk's length
    double ahead; // m
    double drop;  // m
    ArmsAt arms;
    double arms_along;
    double arms_ahead; // m
};

HoldPlace hold_place(const Setup& setup); // with load_along and load_ahead when given

std::span<const Hold> holds_of(Lift lift); // the usual one first

} // namespace amentum
