// On which day does each session of each week fall?
//
// Of all ways to put a week's sessions on its days the cheapest is taken; costs are ours and only their order
// of size matters (place_sessions.cpp). What they say:
//   never on a day off, a game or a start; on a day of travel only when no other day is free;
//   a session with heavy leg work not in the 48 h before a start (two calendar days before it, and the day),
//   and rather in the two days after one; work hard on a tired arm not on the day of a start nor the day
//   after; spaced out; on the weekdays it usually falls on; in its order;
//   youth: never on two days running [Faigenbaum2009].
// When it cannot be moved clear, the session is marked to spare the legs or the arm.
// Range: 1 to 5 sessions, any weekdays. What it cannot tell: the hour of a game; a game the athlete may pitch
// in.
//
// Example: sessions on Monday, Wednesday, Friday and a start on Saturday: Friday's leg session moves to an
// earlier day.
#pragma once

#include "planning/plan_block.h"

#include <optional>
#include <string>
#include <vector>

namespace amentum {

// What a session of the week loads, before anybody knows its exercises.
struct SessionNeeds {
    bool heavy_legs;
    bool hard_on_arm;
};

struct PlacedSession {
    std::size_t of_week; // index of its needs
    Date date;
    std::string spare_legs;  // why: "the start on 2026-04-04 is less than 48 h away"; empty: need not
    std::string spare_arm;   // likewise
    std::string moved;       // "on Wednesday instead of Friday, clear of ..."; empty when on its usual day
    std::string last_resort; // "no other day is free in this week"; empty otherwise
};

struct PlacedWeek {
    std::vector<PlacedSession> sessions; // by date
    int missing;                         // sessions that found no day
};

std::vector<PlacedWeek> place_sessions(const BlockRequest& request,
                                       const std::vector<std::vector<SessionNeeds>>& needs_of_weeks,
                                       bool days_apart);

} // namespace amentum
