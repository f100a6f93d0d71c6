// What does another gym make of this block: the same intent in what stands there, and what is lost of it?
//
// Every line keeps its day, its sets and its purpose; exercise, load, repetitions and rest are found anew:
//   allowed_exercises   what the other gym, the athlete's age and the cautions leave
//   stand_ins           which of them stands in for which, the same in all weeks
//   refit_line          load and repetitions that ask the same, as the other gym makes them
//   lost_intent         how much is kept, in per cent and words; what makes up for some of it
//   worth_buying        the one thing that would restore most
// Where the stand-ins need more minutes than the session has, sets are taken from those that grew most. Lines that nothing
// stands in for leave the block. To the same gym nothing changes, but what an
// open pain entry blocks since: that gives way, or leaves the block.
// The new block is called <athlete>-<first day>-<kit>; guard_rails check it by themselves.
//
//   kept of a quality  = sum sets x share of the quality x kept / sum sets x share of the quality
//   kept of the block  = sum sets x kept / sum sets                           over the lines as written
// Refuses: nothing; a block of no lines stays one.
// What it cannot tell: whether the block would have been written so for this gym from the start: plan_block does that; what
// a lost per cent costs in velocity; back, grip and balance are named and not measured.
//
// Example: a hall's block in a garage with dumbbells to 50 lb: most throws and jumps stay, the legs keep about half.
#pragma once

#include "planning/lost_intent.h"
#include "planning/plan_block.h"

#include <vector>

namespace amentum {

struct RetargetRequest {
    const Block& block;
    const Kit& first_kit;     // what the block was written for
    BlockRequest to;          // as plan_block takes it, with the other kit; weeks and first day of the block
    std::optional<Body> body; // none: the lead leg's demand cannot be told
    SetupsOfExercises setups_first,
        setups_to; // of the exercises that body_mechanics can solve, in either gym
};

struct QualityKept {
    std::string quality;
    double sets; // written, times the share of the work that serves it
    double kept; // 0 to 1
};

struct Purchase {
    std::string what; // "a pair of 80 lb dumbbells"
    double kept;      // of the block, with it
};

struct RetargetedBlock {
    Block block;
    std::vector<RetargetedLine> lines;  // beside the lines of the first block
    std::vector<QualityKept> qualities; // most sets first
    double kept;
    std::vector<Purchase> purchases; // best first, three at most
};

BlockId id_in_other_gym(const Block& block, const KitId& kit);

RetargetedBlock retarget_block(const RetargetRequest& request);

} // namespace amentum
