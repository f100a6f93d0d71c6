// Loads and bar speeds of one lifter and test: as given in a request, or as held.
#pragma once

#include "measurement/load_velocity.h"
#include "operations/inside/facility_view.h"
#include "operations/load_velocity.h"

#include <optional>
#include <string>
#include <vector>

namespace amentum {

struct LiftedLoads {
    std::vector<LoadedRepetition> repetitions; // pull-ups: body mass and added load together
    std::optional<Mass> body_mass;             // set for pull-ups
    std::string date;
    std::string taken;
    std::vector<std::string> left_out;
};

// The lift whose minimal velocity speaks for a test. Refuses a test without a published one.
Result<SpeedLift> speed_lift_of(const TestKind& kind);

Result<LiftedLoads> loads_given(const FacilityView&, const Athlete&, const TestKind&,
                                const LoadVelocityRequest&);
// Held readings with load and speed of one day, taken with the device that has most different loads.
Result<LiftedLoads> loads_held(const FacilityView&, const Athlete&, const TestKind&,
                               const LoadVelocityRequest&);

} // namespace amentum
