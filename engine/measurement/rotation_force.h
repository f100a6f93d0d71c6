// How strong are the shoulder's rotators for one another and for the body, with what error?
//
//   ratio = outward / inward force,  SE = ratio sqrt((SE_o / o)^2 + (SE_i / i)^2)      first order
//   force for body mass = force / body mass, N/kg; dividing by body mass met both assumptions of scaling in
//   overhead athletes [SportsHealth2025]; SE likewise, the mass's own error included
// Positions never mix: hand-held ratios of 0.75 to 1.0 depend on the position (common practice, no source). Both forces
// must be of one position, way of measuring, arm, athlete, rater, tool and day.
// Published ratios: concentric, on a machine of constant speed, 150 professional pitchers: 65 % at 180 degrees a second,
// 61 % at 300 [Wilk1993]. They are compared with no hand-held ratio: published_ratio refuses.
// Units: newtons, kilograms. Valid: forces above 0, errors up to the value, 15 to 200 kg.
// Refusals: unlike tests (method_does_not_apply), values outside their range.
// What it cannot tell: injury, now or later; torque (the lever arm is not in it).
// Example: 120 N +- 9.6 outward, 140 N +- 11.2 inward -> 0.857, SE 0.097
#pragma once

#include "values/interval.h"
#include "values/reading.h"
#include "values/refusal.h"

#include <string>

namespace amentum {

enum class ForceBy { hand_held, constant_speed_machine };
template <>
inline constexpr std::array<std::pair<ForceBy, std::string_view>, 2> words_of<ForceBy>{
    {{ForceBy::hand_held, "hand_held"}, {ForceBy::constant_speed_machine, "constant_speed_machine"}}};

struct RotatorForce {
    TestResult result;    // newtons
    std::string position; // "face down, arm at 90 degrees"; compared letter by letter
    ForceBy by;
};

Result<Estimate> measure_rotator_ratio(const RotatorForce& outward, const RotatorForce& inward);
Result<Estimate> measure_force_for_body_mass(const TestResult& force, const Estimate& body_mass_kg);

// The published concentric ratio at a speed of 180 or 300 degrees a second, for a ratio measured the same way.
Result<double> published_rotator_ratio(ForceBy by, double degrees_per_second);

} // namespace amentum
