// Which calendar day is it in a place, at an instant? By the system's time-zone database [IANA tz], read through date-tz.
//
// An instant belongs to exactly one day of a zone, daylight saving or not; days are then counted as dates, so that a day
// of 23 or 25 hours is one day. East and west of the date line one instant has two days: the one of the place holds.
// Refuses a zone the database does not have.
#pragma once

#include "values/calendar_date.h"
#include "values/refusal.h"

#include <chrono>
#include <string>

namespace amentum {

Result<Date> local_day(const std::string& zone, std::chrono::sys_seconds instant);

// Of the computer's own zone.
Date day_of_this_computer(std::chrono::sys_seconds instant);

} // namespace amentum
