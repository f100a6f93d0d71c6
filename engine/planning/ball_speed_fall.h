// Has the ball become slower, and what then?
//
//   fall within a session    1 - mean speed of the last set / the fastest set of the day, same ball
//   fall between sessions    1 - fastest set of the last session / fastest set before it, same ball
//   under 5 %                as written
//   5 % to under 10 %        a lighter ball, or the end of that throw when there is none
//   10 % and more            the throw ends for the day
// Where from: power work is usually ended after a loss of 5 to 10 % of speed, and little is gained by more
// [HernandezBelmonte2022, up to 25 % of bar speed]; the two numbers for a ball are a proposal of this project, no source.
// Units: m/s. What it cannot tell: whether the arm is tired, the radar stood elsewhere, or nobody tried.
//
// Example: sets at 20.0 and 18.8 m/s -> a fall of 6 %, a lighter ball.
#pragma once

#include "values/block.h"

#include <optional>
#include <vector>

namespace amentum {

inline constexpr double lighter_ball_from = 0.05, stop_throwing_from = 0.10;

enum class BallStep { as_written, lighter, stop };

struct BallFall {
    double share; // 0.06; below 0 when it became faster
    double from;  // m/s
    double to;
};

BallStep step_of(double share);

// Of the sets of one day, in their order; balls within a gram are the same. None with fewer than two speeds of one ball.
std::optional<BallFall> fall_within(const std::vector<const SetDone*>& sets);

// `last`: of the newest day; `before`: of all earlier ones.
std::optional<BallFall> fall_between(const std::vector<const SetDone*>& before,
                                     const std::vector<const SetDone*>& last);

} // namespace amentum
