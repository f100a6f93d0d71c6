// Which exercises of the catalogue may this athlete do, in this gym?
//
// Out goes, in this order: what the kit cannot equip; what is for older athletes; what an open pain entry blocks, and no word of
// a coach brings back; what a caution speaks
// against for one of the athlete's restrictions, unless the caution may be overridden and a coach's reason of
// at least ten letters is kept (the caution "every_thrower" holds for all); a lift whose lightest makeable
// load is above the easiest load the block would ask for.
// The alternatives of a caution that took something away are preferred: worth 1.25 times as much (ours).
// A gym whose heaviest load falls short of the load wanted makes the exercise worth less in proportion.
// What it cannot tell: whether a restriction still holds; people who may, say so.
#pragma once

#include "planning/kit_loads.h"
#include "planning/plan_block.h"
#include "planning/quality_worth.h"
#include "planning/wave.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace amentum {

struct AllowedExercise {
    const Exercise* exercise;
    double worth;                        // per set, quality_worth.h with the preferences above
    double preference;                   // worth over the plain worth of its qualities
    std::string purpose;                 // quality key
    std::vector<std::string> overridden; // cautions overridden with a kept reason
    std::string instead_of;              // condition whose caution made this one preferred; may be empty
};

struct AllowedExercises {
    std::vector<AllowedExercise> list; // in the order of the catalogue
    int missing_equipment = 0;
    int too_young = 0;
    std::vector<std::string>
        notes; // one for each restriction that took something away, and for faults of the kit
    std::map<std::string, std::string>
        why_not; // of the rest of the catalogue: "needs equipment this gym does not have"
};

AllowedExercises allowed_exercises(const BlockRequest& request, const KitLoads& loads,
                                   const QualityWorth& worth);

// The lower side of the athlete's maximum in this exercise, kg: (mean - 1 standard error) x load_share.
std::optional<Mass> lower_maximum(const BlockRequest& request, const Exercise& exercise);

// Pull-ups and the like: the test's value is body mass and added load together.
bool moves_body_mass(const Exercise& exercise);

} // namespace amentum
