// What an open pain entry keeps from being prescribed (data/pain_regions.csv): one row for each region of PainRegion.
//
// An exercise is blocked when its pattern, its region or one of the cautions it names stands in the row. The cautions do the fine
// work: an arm in pain blocks all that "operated_arm" speaks against, because that list says what needs the arm at all.
// How wide a row is: common practice, no source. Wide on purpose: what is blocked waits for a clinician's word, no longer.
// What it cannot tell: what else hurts this person; nobody is fit because an exercise is not blocked.
//
// Example: an elbow blocks a deadlift with the bar in the hands, not a jump onto a box.
#pragma once

#include "values/arm_care.h"
#include "values/exercise.h"

#include <string>
#include <vector>

namespace amentum {

struct PainBlock {
    PainRegion region;
    std::string name;                  // "shoulder", "low back": in a sentence
    bool throwing;                     // throwing is blocked as well
    std::vector<std::string> patterns; // of exercises
    std::vector<Region> regions;       // of exercises
    std::vector<std::string> cautions; // keys of data/cautions.csv
    std::string sentence;              // what is left out, for coach and athlete
    std::vector<std::string> sources;
};

bool blocks(const PainBlock& row, const Exercise& exercise);

} // namespace amentum
