#include "measurement/split_squat.h"

#include "measurement/body_mass_lifts.h"

namespace amentum {

Result<Estimate> estimate_lead_leg_load(LeadLegModel model, Sex sex, Mass body_mass, Mass external_load) {
    if (const auto plausible = check_body_mass(body_mass); !plausible)
        return plausible.refusal();
    if (!(external_load.kilograms() >= 0))
        return refuse_range("load", external_load.kilograms(), 0, 600, "kg", "0 for body weight alone.");
    const Mass system = body_mass + external_load;
    const double rear_leg = sex == Sex::male ? 0.1986 : 0.2088; // of body mass [DeLeva1996]
    const double error = lead_share_sd * system.kilograms();
    switch (model) {
    case LeadLegModel::model_a:
        return Estimate{lead_share_rear_raised * system.kilograms(), error};
    case LeadLegModel::model_b:
        return Estimate{(system - body_mass * rear_leg).kilograms(), error};
    case LeadLegModel::split_squat:
        return Estimate{lead_share_on_floor * system.kilograms(), error};
    }
    assert(!"every model has a share");
    return Estimate{0, 0};
}

} // namespace amentum
