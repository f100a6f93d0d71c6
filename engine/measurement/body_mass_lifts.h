// What do pull-ups and push-ups weigh?
//
// Pull-up: the lifter lifts body mass and added load together, so the 1RM equations (one_rep_max.h) are
//   applied to system mass = body mass + added load (negative when assisted); added 1RM = system 1RM - body
//   mass.
//   Strictly, hands and forearms do not rise: men lift 95.54 %, women 96.12 % of body mass [DeLeva1996]. We
//   use the whole body mass, as the published norms do [Johnson2009] [Coyne2015].
// Push-up: share of body mass on the hands [Ebben2011]: regular 0.64, on the knees 0.49, hands on a 61-cm
//   box 0.41, feet on a 61-cm box 0.74; hands or feet on a 30-cm box 0.55, 0.70 (these two from memory).
// Units: masses. Refusals: body mass outside 15 to 250 kg, system mass not above 0, and those of
//   one_rep_max.h.
// What it cannot tell: how high the chin rose; how deep the chest went.
// Example: 80 kg + 10 kg for 5: system 105 kg, added 25 kg by Epley's equation
#pragma once

#include "measurement/one_rep_max.h"

namespace amentum {

struct PullUpMax {
    Mass system;
    Mass added;            // negative: cannot yet do one without help
    double relative_error; // of the system mass
    double repetitions_to_failure;
    std::vector<std::string> warnings;
};

Result<PullUpMax> estimate_pull_up_max(OneRepMaxEquation equation, Mass body_mass,
                                       const RepetitionSet& added);

enum class PushUp { regular, knees, hands_on_30_cm, hands_on_61_cm, feet_on_30_cm, feet_on_61_cm };
template <>
inline constexpr std::array<std::pair<PushUp, std::string_view>, 6> words_of<PushUp>{
    {{PushUp::regular, "regular"},
     {PushUp::knees, "knees"},
     {PushUp::hands_on_30_cm, "hands_on_30_cm"},
     {PushUp::hands_on_61_cm, "hands_on_61_cm"},
     {PushUp::feet_on_30_cm, "feet_on_30_cm"},
     {PushUp::feet_on_61_cm, "feet_on_61_cm"}}};

Result<Mass> estimate_push_up_load(PushUp push_up, Mass body_mass);

Result<Done> check_body_mass(Mass body_mass);

} // namespace amentum
