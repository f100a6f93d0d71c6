// How far could these moments be off, and through what?
//
// The pose is solved again with one assumption moved by its error at a time; the answers' half differences are added
// in squares (first order, independent causes):
//
//   rear_share        0.036 of the vertical force [Helme2020]; lent to the other split lifts (proposal)
//   pressure          0.05 of the foot's length (proposal, no source)
//   lengths           of shank, thigh and trunk, each by its own error (body.h): the two tables' difference, or 0.5 cm taped
//   hold              1.5 cm of the load's place ahead of the trunk (proposal)
// per_centimetre: what one centimetre more of one length changes; no probability in it.
// Units: N m, hip share as a fraction; angles in degrees. Errors are standard deviations; a band is 1.28 of them.
// A move that has no posture is taken on the other side alone, and when both have none the cause is left out and named
// in `not_moved`.
#pragma once

#include "body_mechanics/solve_pose.h"
#include "values/interval.h"

#include <vector>

namespace amentum {

enum class Cause { rear_share, pressure, shank, thigh, trunk, hold };
template <>
inline constexpr std::array<std::pair<Cause, std::string_view>, 6> words_of<Cause>{
    {{Cause::rear_share, "rear_share"},
     {Cause::pressure, "pressure"},
     {Cause::shank, "shank"},
     {Cause::thigh, "thigh"},
     {Cause::trunk, "trunk"},
     {Cause::hold, "hold"}}};

struct PoseChange { // what one error of a cause, or one centimetre of a length, adds
    Cause cause;
    double ankle, knee, hip; // N m
    std::optional<double> hip_share;
    double solved_angle; // degrees, of the angle that balance solves
};

struct PoseBand {
    Estimate ankle, knee, hip; // N m of the lead leg (or both legs)
    std::optional<Estimate> hip_share;
    double solved_angle_error; // degrees
    std::vector<PoseChange> causes;
    std::vector<PoseChange> per_centimetre; // of shank, thigh, trunk
    std::vector<Cause> not_moved;
};

// Contract: `pose` solves `setup` for `body` and is not a pull-up.
PoseBand estimate_pose_band(const Body& body, const Setup& setup, const Pose& pose);

} // namespace amentum
