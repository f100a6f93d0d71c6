// Days as the text other calendars read: an iCalendar object of all-day events [Rfc5545].
//
//   content line   at most 75 octets, CRLF at its end; a longer one is folded by CRLF and a space, never inside a letter
//                  [Rfc5545, section 3.1]
//   text           backslash, ';' and ',' take a backslash before them, a line break is written \n [Rfc5545, 3.3.11];
//                  other control characters are left out
//   event          UID, DTSTAMP, DTSTART and DTEND as dates (the end is the day after), SUMMARY, DESCRIPTION,
//                  SEQUENCE, TRANSP:TRANSPARENT, because a session takes an hour of the day and not the day [3.6.1]
//   no event       a journal entry that says so: an object needs at least one component [3.6]
//   object         VERSION, PRODID, CALSCALE, METHOD:PUBLISH [3.6], NAME, REFRESH-INTERVAL [Rfc7986, 5.1 and 5.7]
// DTSTAMP is the day handed in, at midnight UTC: a feed written later supersedes an earlier one [Rfc5546, 2.1.5].
// The text depends on nothing else, so the same records give the same bytes.
// What it cannot tell: the hour of a session; none is kept, so events last the whole day and need no time zone.
//
// Example: {"Sled push, 4 x 5"} as a summary is written SUMMARY:Sled push\, 4 x 5
#pragma once

#include "values/calendar_date.h"

#include <string>
#include <string_view>
#include <vector>

namespace amentum {

struct CalendarDay {
    std::string uid; // the same for the same thing, whenever the feed is written
    Date day;
    std::string summary;     // one line
    std::string description; // lines with \n between them
};

struct CalendarText {
    std::string name;
    Date written;
    std::vector<CalendarDay> days;
};

std::string write_calendar(const CalendarText&);

// One content line, folded, CRLF included; `value` is written as it stands.
std::string folded_line(std::string_view name, std::string_view value);
std::string escaped_text(std::string_view text);

} // namespace amentum
