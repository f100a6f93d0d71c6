#include "measurement/body_mass_lifts.h"

namespace amentum {
namespace {

double share_on_the_hands(PushUp push_up) {
    switch (push_up) {
    case PushUp::regular:
        return 0.64;
    case PushUp::knees:
        return 0.49;
    case PushUp::hands_on_30_cm:
        return 0.55;
    case PushUp::hands_on_61_cm:
        return 0.41;
    case PushUp::feet_on_30_cm:
        return 0.70;
    case PushUp::feet_on_61_cm:
        return 0.74;
    }
    assert(!"every push-up has a share");
    return 0;
}

} // namespace

Result<Done> check_body_mass(Mass body_mass) {
    if (!(body_mass.kilograms() >= 15 && body_mass.kilograms() <= 250))
        return refuse_range("body_mass", body_mass.kilograms(), 15, 250, "kg", "Please check the unit.");
    return Done{};
}

Result<PullUpMax> estimate_pull_up_max(OneRepMaxEquation equation, Mass body_mass,
                                       const RepetitionSet& added) {
    if (const auto plausible = check_body_mass(body_mass); !plausible)
        return plausible.refusal();
    const Mass system = body_mass + added.load;
    if (!(system.kilograms() > 0))
        return refuse_range("load", added.load.kilograms(), -body_mass.kilograms(), 250, "kg",
                            "The help cannot be more than the body weighs.");
    const auto maximum = estimate_one_rep_max(equation, {system, added.reps, added.reps_in_reserve});
    if (!maximum)
        return maximum.refusal();
    return PullUpMax{maximum->value, maximum->value - body_mass, maximum->relative_error,
                     maximum->repetitions_to_failure, maximum->warnings};
}

Result<Mass> estimate_push_up_load(PushUp push_up, Mass body_mass) {
    if (const auto plausible = check_body_mass(body_mass); !plausible)
        return plausible.refusal();
    return body_mass * share_on_the_hands(push_up);
}

} // namespace amentum
