#include "planning/calendar_days.h"

#include <algorithm>

namespace amentum {

bool CalendarDays::holds(Date date, DayKind kind) const {
    return std::any_of(request_.calendar.begin(), request_.calendar.end(), [&](const CalendarEntry& entry) {
        return entry.athlete == request_.athlete.id && entry.kind == kind && entry.date <= date &&
               date <= entry.last_date;
    });
}

DayUse CalendarDays::use_of(Date date) const {
    const auto& days = request_.weekdays;
    const bool other_weekday =
        !days.empty() && std::find(days.begin(), days.end(), date.iso_weekday()) == days.end();
    const bool taken = holds(date, DayKind::off) || holds(date, DayKind::start) || holds(date, DayKind::game);
    if (other_weekday || taken)
        return DayUse::never;
    return holds(date, DayKind::travel) ? DayUse::last_resort : DayUse::free;
}

std::optional<Date> CalendarDays::start_within_48_h(Date date) const {
    for (int ahead = 0; ahead <= 2; ++ahead)
        if (holds(date + ahead, DayKind::start))
            return date + ahead;
    return std::nullopt;
}

std::optional<Date> CalendarDays::start_just_before(Date date) const {
    for (int back = 0; back <= 1; ++back)
        if (holds(date - back, DayKind::start))
            return date - back;
    return std::nullopt;
}

bool CalendarDays::soon_after_start(Date date) const {
    return holds(date - 1, DayKind::start) || holds(date - 2, DayKind::start);
}

} // namespace amentum
