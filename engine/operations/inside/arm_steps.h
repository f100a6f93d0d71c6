// The ramp and the clinician's plan in force for one arm: which step is next, and whether its gate is open.
#pragma once

#include "operations/inside/arm_case.h"
#include "operations/plan_ramp.h"

namespace amentum {

// The last of each origin that has steps; the clinician's first.
std::vector<ThrowSteps> steps_in_force(const std::vector<ThrowSteps>& all);
std::vector<ArmSteps> arm_steps(const ArmCase&, const Facility&, Date today);

// Why a clinician's plan keeps this arm from pitching; none: no such plan, or it is through.
std::optional<std::string> plan_not_through(const ArmCase&, Date today);

Result<std::vector<ThrowStep>> steps_given(const std::vector<RampStep>&);
RampStep shown_step(const ThrowStep&, const std::optional<Date>&, const Facility&);
int next_steps_number(const FacilityView&, const AthleteId&);

} // namespace amentum
