// Both sides of one athlete's test, day by day: what a side comparison starts from.
//
// The main side is the one the test kind is about: the throwing arm (for bounds the drive leg), or the lead leg.
#pragma once

#include "operations/inside/facility_view.h"

#include <optional>

namespace amentum {

struct MeasuredSide {
    TestResult result;
    std::vector<double> trials; // of an angle, in degrees; empty for other measures
};
struct SidesOfDay {
    Date date;
    std::optional<MeasuredSide> main;
    std::optional<MeasuredSide> other;
    std::vector<std::string> refusals; // why a side's readings make no result
};

// Earliest day first; days without a reading of either side are not there.
std::vector<SidesOfDay> sides_by_day(const FacilityView&, const TestKind&, const Athlete&);

std::string main_side_words(const TestKind&); // "throwing side", "lead leg"
std::string other_side_words(const TestKind&);

} // namespace amentum
