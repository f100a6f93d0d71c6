// Between a test's own unit and the scale it is reasoned about in: logarithms when its error grows with its
// value.
//
// x = log(value); a fraction f of the value is an error of f in x [BlandAltman1996log]. Back: the median is
// exp(x) and the central interval is exp of the interval. Values must be above 0 on the logarithmic scale.
#pragma once

#include "inference/trajectory.h"
#include "values/interval.h"
#include "values/test_kind.h"

namespace amentum {

struct BackOnUnit {
    double value;  // median
    Interval band; // central, z standard deviations each way
};

DatedValue on_scale(Scale scale, int day, double value, double standard_error);
BackOnUnit back_on_unit(Scale scale, const StateOnDay& state, double z = z80);
double difference_on_unit(Scale scale, double at,
                          double difference); // of a small step from `at` (both on scale)

} // namespace amentum
