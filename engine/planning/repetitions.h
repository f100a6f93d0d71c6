// How many repetitions can be done at a fraction of the maximum, and how many of them should be?
//
//   possible = 30 (1 / fraction - 1)            Epley's line turned round [Epley1985], never fewer than 1
//   done     = possible - reserve               repetitions done and in reserve add up [Zourdos2016]
// Units: whole repetitions, rounded down. Range: fraction above 0.
// What it cannot tell: this athlete's own relation; at 70 % of the squat maximum trained lifters differ from
// 6 to 26 repetitions [Zourdos2021].
//
// Example: repetitions_possible(0.80) == 7; with 2 in reserve 5 are done.
#pragma once

#include "planning/wave.h"

namespace amentum {

int repetitions_possible(double fraction);

struct RepetitionRange {
    int fewest;
    int most;
};

RepetitionRange repetition_range(Part part, Loading loading);
int reserve_wanted(Part part, Loading loading); // repetitions left at the end of a set

struct Repetitions {
    int done;
    double reserve; // at most 5: beyond that people misjudge it by more than two repetitions [Hackett2017]
};

// Repetitions at `fraction` of the maximum that leave `reserve`, kept inside the range of that part of a
// session.
Repetitions repetitions_leaving(int reserve, double fraction, Part part, Loading loading);

} // namespace amentum
