// Can these readings be? Each new one must pass measure_test, and so must the day's readings together with those held.
#pragma once

#include "records/inside/read_line.h"

namespace amentum {

struct NewReading {
    Reading reading;
    LineReader* line; // takes the refusal
};

void check_readings(const std::vector<NewReading>& readings, const ImportContext& context);

} // namespace amentum
