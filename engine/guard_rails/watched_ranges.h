// Inner step of check_ranges.h: what is watched, day by day, out of all results of an athlete.
//
// One value a day for each of total rotation, flexion and force for body mass of the throwing arm; ascending. Days whose two
// rotations were not taken alike, and forces without a body mass within 31 days, give none.
#pragma once

#include "values/athlete.h"
#include "values/reading.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace amentum {

struct WatchedDay {
    Date date;
    double value;
    double standard_error;
    std::string rater;
    std::string device;
};

struct WatchedRange {
    std::string name; // "Total rotation of the throwing shoulder"
    std::string unit; // "degrees"
    int decimals;
    double least_drop;                    // no drop up to this is ever a finding
    std::optional<double> between_raters; // published MDC90; none: unlike days are not compared
    std::vector<WatchedDay> days;
};

std::vector<WatchedRange> watched_ranges(const Athlete& athlete, std::span<const TestResult> results,
                                         Date today);

} // namespace amentum
