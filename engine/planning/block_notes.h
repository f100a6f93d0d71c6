// What could not be met, and why: the whole sentences at the foot of a block.
#pragma once

#include "planning/allowed_exercises.h"
#include "planning/place_sessions.h"
#include "planning/quality_worth.h"

#include <string>
#include <vector>

namespace amentum {

struct NoteFacts {
    const BlockRequest& request;
    const AllowedExercises& allowed;
    const QualityWorth& worth;
    const std::vector<PlacedWeek>& weeks;
    const std::vector<BlockLine>& lines;
    const std::vector<std::string>& no_room; // always wanted, but out for want of minutes: names
    const std::string& next_line;            // the most worthwhile of the rest; may be empty
    const std::vector<std::string>& spared;  // names that left a session near a start, without a stand-in
    int sessions;                            // a week, after the youth rules
};

std::vector<std::string> describe_notes(const NoteFacts& facts);

} // namespace amentum
