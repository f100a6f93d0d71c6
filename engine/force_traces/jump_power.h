// What power does a jump's height stand for, when there is no plate?
//
// h height in cm, m body mass in kg, W:
//   sayers_squat             60.7 h + 45.3 m - 2055     peak, jump from a held squat [Sayers1999]
//   sayers_countermovement   51.9 h + 48.9 m - 2007     peak, jump with a dip [Sayers1999], from memory
//   harman_peak              61.9 h + 36.0 m - 1822     peak [Harman1991]
//   harman_mean              21.2 h + 23.0 m - 1393     mean [Harman1991]
//   lewis                    sqrt(4.9) 9.81 m sqrt(h / 100)   an average over a fall; it underestimates [Harman1991]
//   canavan_women            65.1 h + 25.8 m - 1413.1   peak, women; standard error 120.8 W [CanavanVescovi2004]
// Sign trap: Harman is often copied with +1822. Canavan and Vescovi's group means (two by Sayers, 2920.8 and 2925.1 W)
// belong to 32.3 cm and 66.6 kg; there -1822 gives 2572 W against their 2585.0, and +1822 would give 6216.
// Valid: 5 to 110 cm, 30 to 200 kg, and a positive answer. Refusals: outside (out_of_range); an answer not above 0
//   (method_does_not_apply): the line does not reach so small a jump.
// What it cannot tell: the power of this athlete. The equations differ by hundreds of watts among themselves, and
//   height, which the athlete may reach with many a technique, is all they see. Never compared with a plate's power.
// Example: 60 cm, 75 kg -> sayers_squat 4984.5 W, harman_peak 4592.0 W, lewis 1261.55 W
#pragma once

#include "values/enum_words.h"
#include "values/refusal.h"

namespace amentum {

enum class PowerEquation {
    sayers_squat,
    sayers_countermovement,
    harman_peak,
    harman_mean,
    lewis,
    canavan_women
};
template <>
inline constexpr std::array<std::pair<PowerEquation, std::string_view>, 6> words_of<PowerEquation>{
    {{PowerEquation::sayers_squat, "sayers_squat"},
     {PowerEquation::sayers_countermovement, "sayers_countermovement"},
     {PowerEquation::harman_peak, "harman_peak"},
     {PowerEquation::harman_mean, "harman_mean"},
     {PowerEquation::lewis, "lewis"},
     {PowerEquation::canavan_women, "canavan_women"}}};

Result<double> jump_power(PowerEquation equation, double height_cm, double body_mass_kg); // W

} // namespace amentum
