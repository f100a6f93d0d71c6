// The words for numbers, in one place, so that no two screens say the same thing differently.
//
// Rules: "goes with", never "causes"; an interval beside each estimate; no verdict while 10 % < P < 90 %.
// Chances are said in whole per cent, and "under 1 %" or "over 99 %" at the ends.
#pragma once

#include "reports/shown_units.h"
#include "values/calendar_date.h"
#include "values/interval.h"

#include <optional>
#include <string>

namespace amentum {

std::string describe_chance(double probability); // "71 %"
std::string describe_estimate(double value, Interval band,
                              const ShownUnit&); // "81.9 mph (80 %: 80.7 to 83.1)"
std::string describe_difference(double value, Interval band,
                                const ShownUnit&); // "+0.7 mph (80 %: -0.3 to +1.6)"

struct ChangeWords {
    std::string quality; // "throwing velocity"
    double measured;     // all in SI, shown by `unit`
    double likely;
    Interval band;
    double chance_gained; // P(> smallest worthwhile)
    double chance_lost;
    double smallest_worthwhile;
    double smallest_detectable;
    Date from;
    Date to;
    bool growth_taken_out =
        false; // below 18, of velocity: the likely change is beyond what growth alone brings
};
// The verdict's sentence first, then what was measured, then what test noise alone can do.
std::string describe_change(const ChangeWords&, const ShownUnit&);

// "3 days since the last hard throw (2026-03-02, game)"; "no throws are recorded".
std::string describe_hard_throw(std::optional<int> days, std::optional<Date> when,
                                const std::string& setting);

// The one sentence that stands on every sheet and page that prescribes.
std::string describe_limits_of_tool();

} // namespace amentum
