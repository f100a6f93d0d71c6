// What a person types of throws, and how it becomes a ThrowEntry. What may stand on one day: records/check_throws.h.
#pragma once

#include "operations/inside/inside.h"
#include "operations/record_throws.h"

namespace amentum {

// Refuses numbers outside their limits, unknown settings, a day after `today` (of the place), counts that do not fit the
// setting. `mark` stands before field names: "lines[2]."; empty for one entry.
Result<ThrowEntry> throw_entry_from(const RecordThrowsRequest&, const AthleteId&, Date today,
                                    const std::string& mark = "");

// "4.1" is four innings and one out, as scorers write it: 13 outs.
Result<int> outs_from(const std::string& field, const std::string& innings);

// The entries of that athlete and day.
std::vector<ThrowEntry> of_day(const std::vector<ThrowEntry>& all, const ThrowEntry& entry);

const ThrowEntry* held_entry(const std::vector<ThrowEntry>& all, const ThrowEntry& entry);

// `entry` with the soreness it lacks taken from `later`: the next day's is known a day later.
ThrowEntry with_later_soreness(ThrowEntry entry, const ThrowEntry& later);

} // namespace amentum
