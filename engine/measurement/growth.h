// What does growth alone do to a young thrower's velocity, and where in growth is the athlete?
//
// Velocity [Sgroi2015, 420 pitchers of 14.7 +- 2.6 years, cross-sectional]: +1.5 mph a year of age, +1.2 mph
//   an inch of stature. No standard error was published with them; none is stated here.
// Maturity offset, years from peak height velocity (negative: before), SH sitting height, LL = H - SH, cm; W
//   kg; age y:
//   mirwald [Mirwald2002], SEE 0.592 boys, 0.569 girls; the weight/height ratio is taken x 100:
//     boys  -9.236 + 0.0002708 LL SH - 0.001663 age LL + 0.007216 age SH + 0.02292 (100 W / H)
//     girls -9.376 + 0.0001882 LL SH + 0.0022 age LL + 0.005841 age SH - 0.002658 age W + 0.07693 (100 W / H)
//   moore   [Moore2015], SEE 0.542 boys, 0.528 girls (errors and girls' coefficients from memory):
//     boys  -7.999994 + 0.0036124 age H          girls -7.709133 + 0.0042232 age H
// Valid: age 8 to 18 years, H 100 to 210, SH 50 to 115 (and below H) cm, W 15 to 150 kg. Refusals: outside.
// Bias: early maturers at their true peak are put 1.15 years too early, average ones 0.36
//   [KozielMalina2018]: use as a band (before, around within 1 year, after), never for selection.
// What it cannot tell: skeletal age. The sitting-height form of [Moore2015] is left out: two sources print
//   its constant differently.
// Example: boy, 13.0 years, 156 cm, sitting 80 cm, 45 kg: -1.0668 years by mirwald
#pragma once

#include "values/athlete.h"
#include "values/interval.h"
#include "values/refusal.h"

namespace amentum {

// Velocity expected from growth alone.
Speed growth_velocity(double years, Length stature_gained);

enum class OffsetEquation { mirwald, moore };
template <>
inline constexpr std::array<std::pair<OffsetEquation, std::string_view>, 2> words_of<OffsetEquation>{
    {{OffsetEquation::mirwald, "mirwald"}, {OffsetEquation::moore, "moore"}}};

struct Growing {
    Sex sex;
    double age; // years
    Length stature;
    std::optional<Length> sitting_height; // needed by mirwald
    std::optional<Mass> body_mass;        // needed by mirwald
};

Result<Estimate> estimate_maturity_offset(OffsetEquation equation, const Growing& athlete); // years

enum class GrowthBand { before, around, after };
template <>
inline constexpr std::array<std::pair<GrowthBand, std::string_view>, 3> words_of<GrowthBand>{
    {{GrowthBand::before, "before"}, {GrowthBand::around, "around"}, {GrowthBand::after, "after"}}};

// Of the growth spurt; proposal of this project, no source: before -1, -1 to 1, after 1 year.
GrowthBand growth_band(double maturity_offset);

} // namespace amentum
