// Inner step of step_progress.h: the same in whole sentences, with the criterion and where it comes from.
//
// It says which step, since when, why the gate is open or closed, and what has to be written down. It never says that an arm
// is ready, fit or cleared.
#pragma once

#include "throwing_workload/step_progress.h"

namespace amentum {

struct StepStop {                   // a stop for pain that is not over
    std::optional<Date> since = {}; // first day of the steps on which it held
    std::optional<Date> pain = {};  // the date of the entry that stops, the latest of several
    bool step_back = false;         // pain was felt after the steps began
};

std::string describe_step_progress(const ThrowSteps& steps, const StepProgress& progress,
                                   const StepStop& stop, Date today);

} // namespace amentum
