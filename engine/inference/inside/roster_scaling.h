// A roster's readings brought to unit spread, and laid in one row of memory.
// Refusals: too_few_data: a quality with fewer than 3 readings, or one that never varies.
#pragma once

#include "inference/inside/joint_data.h"
#include "inference/joint_model.h"

namespace amentum {

constexpr double days_a_unit = 30;

struct RosterScaling { // shown = centre + unit x inside
    Eigen::VectorXd centre, unit;
};

Result<RosterScaling> scaling_of(const RosterData& data);
JointShape shape_of(const RosterData& data);
FlatData flat_data(const RosterData& data, const RosterScaling& scaling);

} // namespace amentum
