// Whose trace, of which effort, may a file of this name be? Words of the name against words that are known.
//
// The name with its folders is cut into words at everything that is not a letter or digit, and between a small letter
// and a capital. Athlete: all words of one athlete's name are there, in any order (sure), or one word that belongs to
// a single athlete (not sure), or a near spelling (not sure). Effort: words as the trade writes them (cmj, squat jump,
// drop jump, hops, mid-thigh pull, bound). Legs: left, right, l, r. Day: 2026-06-01, 20260601, 2026_06_01; other
// orders are ambiguous and are not taken. Trial: the last lone number of one or two digits, or t3, trial 3, rep 3.
// What it cannot tell: whether the name is true. A person confirms.
#pragma once

#include "force_traces/trace_measurement.h"
#include "values/athlete.h"
#include "values/calendar_date.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace amentum {

struct TraceName {
    const Athlete* athlete = nullptr; // among those given
    bool athlete_sure = false;
    std::optional<TraceTest> effort;
    std::optional<Legs> legs;
    std::optional<Date> date;
    std::optional<int> trial;
};

std::vector<std::string> words_of_name(const std::string& file_name); // small letters, without the ending
TraceName read_trace_name(const std::string& file_name, std::span<const Athlete> athletes);

} // namespace amentum
