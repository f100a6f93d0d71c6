// Which stance, pad, handle, lean or load gives the joint angle, hip share or moment wanted?
//
// One setting is varied between limits, everything else held. The range is walked in equal steps; a step that crosses the
// wanted value is narrowed by bisection until the setting stands to 0.1 mm, 0.01 degrees or 10 g. Several crossings: the
// one nearest the setting asked from. None: the nearest reachable value, and what stops the search there (the end of the
// range, the athlete's own range of motion, no posture beyond).
// Limits of motion: see MotionLimits; a pose beyond them counts as no posture.
// Refusals: method_does_not_apply (a setting or target that lift has not), out_of_range, no_such_posture when no step of
// the range has any posture.
#pragma once

#include "body_mechanics/lift_settings.h"
#include "body_mechanics/solve_pose.h"

#include <string>
#include <vector>

namespace amentum {

enum class Varied { stance, pad_height, box_height, handle_height, trunk_lean, shin_lean, load };
template <>
inline constexpr std::array<std::pair<Varied, std::string_view>, 7> words_of<Varied>{
    {{Varied::stance, "stance"},
     {Varied::pad_height, "pad_height"},
     {Varied::box_height, "box_height"},
     {Varied::handle_height, "handle_height"},
     {Varied::trunk_lean, "trunk_lean"},
     {Varied::shin_lean, "shin_lean"},
     {Varied::load, "load"}}};

std::optional<Setting> setting_varied(Varied); // none for the load

enum class Target { knee_angle, hip_angle, shin_angle, trunk_angle, hip_share, knee_moment, hip_moment };
template <>
inline constexpr std::array<std::pair<Target, std::string_view>, 7> words_of<Target>{
    {{Target::knee_angle, "knee_angle"},
     {Target::hip_angle, "hip_angle"},
     {Target::shin_angle, "shin_angle"},
     {Target::trunk_angle, "trunk_angle"},
     {Target::hip_share, "hip_share"},
     {Target::knee_moment, "knee_moment"},
     {Target::hip_moment, "hip_moment"}}};

// The athlete's own tests where there are any; otherwise wide usual ends (common practice, no source).
struct MotionLimits {
    Angle ankle = Angle::degrees(45); // most shin lean with the heel down
    Angle knee = Angle::degrees(150); // most flexion
    Angle hip = Angle::degrees(140);  // most flexion, thigh to trunk
    Angle trunk = Angle::degrees(80); // most lean
    bool ankle_tested = false;
};

struct Wanted {
    Target target;
    double value; // degrees, a share from 0 to 1, or N m for one lead leg
    Varied varied;
    double low, high; // of the varied setting: m, degrees or kg
};

struct Found {
    bool reached;
    double setting; // m, degrees or kg
    double value;   // of the target there
    Setup setup;    // with the setting put in
    Pose pose;
    std::string stopped_by; // a whole sentence; empty when reached
};

// The setting of `from` for what is varied, when given, says which of several answers is meant.
Result<Found> search_setup(const Body& body, const Setup& from, const MotionLimits& limits,
                           const Wanted& wanted);

// The first limit of motion this pose is beyond, as a sentence; empty when inside all.
std::string beyond_motion(const Pose& pose, const MotionLimits& limits);

} // namespace amentum
