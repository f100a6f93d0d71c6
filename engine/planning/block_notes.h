// What could not be met, and why: the whole sentences at the foot of a block.
#pragma once

#include "planning/state_problem.h"

#include <string>
#include <vector>

namespace amentum {

struct NoteFacts {
    const BlockRequest& request;
    const AllowedExercises& allowed;
    const QualityWorth& worth;
    const StatedProblem& stated;
    const PlanSets& plan;
    const std::vector<BlockLine>& lines;
    const std::vector<std::string>& spared; // names that left a session near a start, without a stand-in
};

std::vector<std::string> describe_notes(const NoteFacts& facts);

} // namespace amentum
