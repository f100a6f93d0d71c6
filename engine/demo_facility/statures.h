// Youths of the hall stand at the wall every month, and one of them is in a spurt.
//
// On a day of each month two readings to the millimetre, with an error between days and between readings, for those who are
// not yet 16; test days have one of their own, to the half centimetre. Everybody grows 5.5 cm a year (simulation.h); Caleb
// Underhaugh grew slower before and 10 cm a year in the last months, and stands today where the list of throwers says. His
// velocity was simulated without the spurt. Random numbers from a stream of their own.
#pragma once

#include "values/record_set.h"

#include <cstdint>

namespace amentum {

// m: as taped on that day, without error.
double stature_taped_on(const Athlete&, Date last_day, int day);

// Call when all other readings stand.
void add_statures(RecordSet&, const Athlete&, Date last_day, std::uint64_t seed);

} // namespace amentum
