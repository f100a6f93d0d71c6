// What a block is planned from: the asked numbers beside everything the records know of this athlete on this day.
//
// The same request for every face of a block: planning, pricing, changing by hand, a whole squad.
#pragma once

#include "operations/inside/inside.h"
#include "operations/inside/limiter_work.h"
#include "planning/plan_block.h"

namespace amentum {

struct BlockAsked {
    Date start;
    int weeks = 4;
    int sessions_per_week = 3;
    double minutes = 60;            // a session
    std::vector<int> weekdays = {}; // 1 Monday ... 7 Sunday; empty: any day
};

// What an open pain entry of this athlete blocks on a day. Planning asks for today: what is felt or cleared later is seen by the
// guard rails, and by the next planning.
std::vector<PainBlock> painful_regions(const FacilityView&, const ReferenceTables&, const Athlete&, Date day);

// What a kept block was asked with, as far as it shows: the weekdays are those it uses.
BlockAsked asked_of(const Block&);

// The field `start`: the next Monday when left out; refuses a day before today.
Result<Date> first_day(const std::optional<std::string>& start, Date today);

// The note on a block whose limiters could not be told apart.
inline constexpr const char* records_undecided = "The records cannot tell which quality is best to train: "
                                                 "the sets follow each one's expected gain, and these "
                                                 "lie close together.";

// The field `effort`: brief when left out.
Result<Effort> effort_named(const std::optional<std::string>&);

BlockRequest block_request(const Workplace::Inside&, const FacilityView&, const Athlete&, const Kit&,
                           const BlockAsked&, const LimiterWork&);

} // namespace amentum
