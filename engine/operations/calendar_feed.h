// calendar_feed: the sessions of kept blocks as a calendar that phones and calendars can follow [Rfc5545].
//
// Of one thrower: every kept block, where a later one takes over from the day it starts on, and of two that start on one
// day (one gym and another) the one kept_block names. Of one block: its own sessions. Also served as text/calendar at
// /calendar/<thrower or block>.ics, for a calendar that looks again by itself.
// A session keeps its identity when the block is planned again or moved to another day. Events last the whole day: a
// session has a day and its minutes, and no hour.
// Refuses: neither thrower nor block, or both; names that are not known. A thrower without a block has an empty calendar.
// What it cannot do: keep an address secret. Whoever can reach the server can read it.
#pragma once

#include "operations/workplace.h"
#include "values/refusal.h"

#include <boost/describe/class.hpp>

#include <optional>
#include <string>

namespace amentum {

struct CalendarFeedRequest {
    std::optional<std::string> athlete;
    std::optional<std::string> block;
};
BOOST_DESCRIBE_STRUCT(CalendarFeedRequest, (), (athlete, block))

struct CalendarFeedAnswer {
    std::string name;
    std::string address; // on this server: "/calendar/ona-reyes.ics"
    std::string file_name;
    int sessions;
    std::string words;
    std::string text;
};
BOOST_DESCRIBE_STRUCT(CalendarFeedAnswer, (), (name, address, file_name, sessions, words, text))

Result<CalendarFeedAnswer> calendar_feed(Workplace&, const CalendarFeedRequest&);

} // namespace amentum
