// How hard and how much is each week of a block?
//
// Weeks run in fours: three that rise in intensity, then one at the intensity reached with about half the
// sets. A later four starts a little higher; the maximum is not assumed to rise with it.
//
//   fraction of the estimated maximum, main lifts   week 1    2      3      4     later fours
//   trained                                         0.75    0.80   0.85   0.85   + 0.025
//   novice                                          0.65    0.70   0.75   0.75   + 0.025
//   youth rules                                     0.60    0.65   0.70   0.70   the same
// Assistance is 0.10 below, loaded shoulder and trunk work 0.20 below. Loaded speed work is at 0.60 of its
// own usual maximum throughout, which the catalogue already sets at what can still be moved fast.
// Sources: about 60 % for untrained and 80 % for trained people [Rhea2003]; above 60 % for strength
// [Schoenfeld2017]; periodised work gains more [Williams2017b]; sets are halved, not stopped, because a full
// stop costs strength [Coleman2024]. The numbers of the table themselves are a proposal of this project, no source.
//
// A meso is the run of weeks in which the main lifts stay the same: four weeks, a last one of three, and one
// or two weeks left over join the meso before them, so that no main lift is kept less than three weeks.
// Range: weeks 4 to 16. What it cannot tell: whether the athlete needs the easier week earlier.
//
// Example: 9 weeks -> mesos of 4 and 5 weeks; reduced weeks 4 and 8.
#pragma once

#include "planning/plan_block.h"

#include <vector>

namespace amentum {

// Who is trained how: the youth rules come before the training status.
enum class Loading { youth, novice, trained };

Loading loading_of(const Athlete& athlete, Date start);

struct WeekOfWave {
    int week; // 1 ...
    int meso; // 0 ...
    int step; // 0, 1, 2: how far the rise has come; the reduced week stays at 2
    bool reduced;
    double fraction; // of the estimated maximum, for main lifts
};

std::vector<WeekOfWave> plan_wave(int weeks, Loading loading);

double fraction_for(Part part, double main_fraction);

// The sets of a session's lines in a reduced week: halved, the rest carried from line to line, at least one a line.
// {3, 3, 2} -> {2, 1, 1}
std::vector<int> reduced_sets(const std::vector<int>& sets);

} // namespace amentum
