// What does the athlete's calendar say about one day?
//
// Entries are runs of days; a day may be in several. A start counts 48 h ahead as the day itself and the two
// calendar days before it, because the calendar knows no hours.
//
// Example: a start on the 4th -> legs_spared_on(2nd), (3rd), (4th); arm_spared_on(4th), (5th).
#pragma once

#include "planning/plan_block.h"

#include <optional>

namespace amentum {

enum class DayUse { free, last_resort, never };

class CalendarDays {
public:
    explicit CalendarDays(const BlockRequest& request) : request_(request) {}

    DayUse use_of(Date date) const;                         // never: off, start, game; last resort: travel
    std::optional<Date> start_within_48_h(Date date) const; // the nearest, the day itself included
    std::optional<Date> start_just_before(Date date) const; // the same day or the day before
    bool soon_after_start(Date date) const;                 // one or two days after

private:
    bool holds(Date date, DayKind kind) const;
    const BlockRequest& request_;
};

} // namespace amentum
