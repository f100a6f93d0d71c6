// Is a young thrower growing fast, when was height measured last, and roughly where in growth is that?
//
// Of throwers under 18 on `today`, from results of the test `stature` (m) with their known errors:
//   rate    slope of the line through the heights of the last 183 days, weighted by 1 / SE^2 (measurement/straight_line.h),
//           widened when they lie worse on it than their errors allow; cm a month of 30.4375 days, with its standard error
//   between two heights a month or more apart: their difference over the time, SE from both
//   spurt   rate - 1.645 SE > 0.6 cm a month (about 7 cm a year), the last height at most 92 days old: warns
//           `growth_spurt`. Both numbers are proposals of this project, no source; growth plates are weaker then than
//           tendons (common practice, from memory), and old numbers of velocity and range no longer fit the body.
//   measure_height   no height in the last 31 days: notes. Two heights of 6 mm error, a month apart, leave the rate uncertain
//           by 1.4 cm a month: only a row of months shows a spurt.
//   where in growth  maturity offset (measurement/growth.h): mirwald with the sitting height on the athlete's record and a body
//           mass within 92 days, otherwise moore; on the day of the last height. Told as a band, with its standard error and
//           its bias in words: early maturers look 1.15 years less mature than they are, average ones 0.36 [KozielMalina2018].
// Units: cm, months, years; the words in the hall's unit. Range: results of any athletes and tests, in any order; those
// after `today` are left out.
// What it cannot tell: skeletal age; when the spurt ends; injury. The sitting height on the record has no date: an old one puts
// the band too early. Never for selection.
//
// Example: 150.0, 151.2, 152.3, 153.6 cm at months 0, 1, 2, 3, error 3 mm each: 1.19 cm a month, SE 0.13: `growth_spurt`.
#pragma once

#include "guard_rails/finding.h"
#include "measurement/growth.h"
#include "values/athlete.h"
#include "values/facility.h"
#include "values/reading.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace amentum {

struct HeightOfDay {
    Date date;
    Estimate height;              // cm
    std::optional<Estimate> rate; // cm a month, since the last height a month (28 days) or more older
};

struct GrowthWatch {
    std::vector<HeightOfDay> heights; // ascending
    std::optional<int> days_since_height;
    std::optional<Estimate> rate;   // cm a month over the last half year; none: fewer than two heights in it
    std::optional<Estimate> offset; // years from the fastest growth; for the band, not for print as a date
    std::optional<OffsetEquation> equation;
    std::vector<Finding> findings;
    std::vector<std::string> words; // whole sentences
};

// From 18 years on: everything empty.
GrowthWatch check_growth(const Athlete& athlete, std::span<const TestResult> results, Date today,
                         LengthUnit words_in = LengthUnit::centimetres);

} // namespace amentum
