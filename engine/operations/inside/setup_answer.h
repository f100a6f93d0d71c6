// The numbers of a solved set-up as an answer shows them: settings, joints, share, causes, drawing.
//
// Lifts on two feet and pull-ups are shown for one leg, or one arm: half of both.
#pragma once

#include "body_mechanics/pose_band.h"
#include "operations/inside/setup_given.h"

namespace amentum {

struct SolvedHere {
    const BodyGivenHere& given;
    const SetupGivenHere& asked;
    Setup setup;                 // with what a search found put in
    std::optional<Varied> found; // what it was
    Pose pose;
    std::optional<PoseBand> band; // none for a pull-up
};

std::vector<ShownSetting> shown_settings(const SolvedHere&);
std::vector<ShownJoint> shown_joints(const SolvedHere&);
std::optional<ShownEstimate> shown_share(const SolvedHere&);
std::vector<ShownCause> shown_causes(const SolvedHere&);
DrawnSetup drawn_setup(const SolvedHere&);

// m, lead heel to the pad's near edge, or to the ball of the back foot.
double stance_from_pad(const SolvedHere&);

} // namespace amentum
