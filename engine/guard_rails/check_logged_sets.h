// Which sets were done although an open pain entry spoke against them?
//
// A logged set warns when, on its day, a pain entry of this athlete was open that blocks its exercise (pain_regions.csv). It has
// happened, so nothing is stopped; the words are to stop and refer. A set of the day on which the pain was felt warns too: nobody
// can tell which came first. Sets of the last 28 days, up to `today`; one finding an exercise and day.
// Sets of exercises outside the catalogue cannot be judged and give none; sets of other athletes are left out.
// What it cannot tell: what was done and not logged; whether it did harm.
//
// Example: an elbow noted on Monday, a row logged on Wednesday -> one finding, "set_despite_pain".
#pragma once

#include "guard_rails/care_record.h"
#include "guard_rails/finding.h"
#include "values/athlete.h"
#include "values/block.h"

#include <span>

namespace amentum {

std::vector<Finding> check_logged_sets(std::span<const SetDone> sets, const Athlete& athlete,
                                       std::span<const Exercise> catalogue, const CareRecord& care,
                                       Date today);

} // namespace amentum
