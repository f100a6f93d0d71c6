// One trial as a value in its test's unit, and the way it was measured: two ways never share a result.
//
// Which fields a measure reads is fields_needed and fields_optional of measure_test.h; formulas and ranges
// are those of radar.h, ball_flight.h and jump_height.h. Refuses what they refuse, a missing field, and
// another ball than the test's (by more than 3 %: proposal of this project, no source). Lifts are not trials
//   of one thing: measure_lifts.cpp.
#pragma once

#include "values/reading.h"
#include "values/refusal.h"
#include "values/test_kind.h"

#include <string>
#include <vector>

namespace amentum {

enum class Way { direct, radar, distance, least_speed, flight_time, take_off_velocity };

struct Trial {
    double value;
    double method_error; // in the test's unit
    Way way;
    std::string field; // what to look at when the value cannot be
    std::vector<std::string> warnings;
};

Result<Trial> measure_trial(const TestKind& kind, const Reading& reading);

// For a result's method; a direct reading needs no words.
std::string words_of_way(Way way);

} // namespace amentum
