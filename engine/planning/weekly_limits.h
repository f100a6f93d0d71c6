// How many hard sets a week may a region, the arm, the legs before a start take?
//
//   weekly hard sets      legs, whole body   pulling    pressing   shoulder, trunk
//                         usual  most        usual most usual most usual most
//   trained               10     18          10   16    8    12    8    12
//   novice                8      12          8    12    6    10    6    10
//   youth rules           6      9           6    9     4    8     4    8
//   weekly sets hard on a tired arm: 12, 8, 6; sets heavy for the legs in the week of a start: 8, 6, 4
// More than ten sets a week bring little more strength [Ralston2017]; youth 1 to 3 sets, two or three days a week
// [Faigenbaum2009]. The numbers of the table are a proposal of this project, no source.
// What it cannot tell: how much this thrower recovers from; soreness and the count of throws say more.
//
// Example: weekly_limits(Loading::youth, 60).regions[legs].most == 9
#pragma once

#include "planning/block_problem.h"
#include "planning/wave.h"

namespace amentum {

int most_sets(Part part, Loading loading); // of one line
PlanLimits weekly_limits(Loading loading, double minutes);

} // namespace amentum
