// What one centimetre (or inch) more of thigh, shank or trunk changes in a rear-foot-raised split squat of this body, and
// which length is worth taping next.
//
// The set-up is the lift's usual one (usual_setup.h) with the body's own mass on the back; half differences of
// body_mechanics/pose_band.h. Tape next: lengths still scaled by stature, by how far 1.5 % of them moves hip and knee.
#pragma once

#include "operations/inside/body_given.h"

namespace amentum {

struct LengthEffects {
    std::string lift; // the set-up in words
    std::vector<ShownLengthEffect> effects;
    std::vector<std::string> tape_next;
    std::vector<std::string> sources;
    std::string why_none; // a sentence, when this body has no posture in that set-up
};
LengthEffects length_effects(const BodyGivenHere&);

} // namespace amentum
