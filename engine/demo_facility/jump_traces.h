// What the hall's pair of force plates would have written of some countermovement jumps.
//
// Three throwers with a jump on a mat on their last test days jump again on the plates, three times a day. Vertical force
// at 500 samples a second, in steps of 0.5 N:
//   standing   W, 1.4 s or more
//   dip        W - 0.62 W sin^2(pi t / 0.40 s), for 0.40 s
//   push       W + A sin^2(pi t / 0.40 s), A such that the take-off speed is the one of the day's height on the mat
//   leaving    W to 0 in 0.03 s, then nothing for 2 v / g, a landing of 0.25 s, and standing again
// The two plates share it, the left a little more or less, and each reads 1.2 N of noise and an offset of its own.
#pragma once

#include "recordings/kept_trace.h"
#include "values/record_set.h"

#include <cstdint>
#include <vector>

namespace amentum {

std::vector<KeptTrace> make_jump_traces(const RecordSet& records, std::uint64_t seed);

} // namespace amentum
