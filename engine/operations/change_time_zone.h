// change_time_zone: the zone whose days the facility counts by, from now on.
//
// Days already written down stay the days they were. Without a zone the computer's own holds.
// Refuses a name the time-zone database does not have.
#pragma once

#include "operations/workplace.h"
#include "values/refusal.h"

#include <boost/describe/class.hpp>

#include <string>

namespace amentum {

struct ChangeTimeZoneRequest {
    std::string time_zone; // of the tz database: America/Halifax; empty: the computer's own
};
BOOST_DESCRIBE_STRUCT(ChangeTimeZoneRequest, (), (time_zone))

struct ChangeTimeZoneAnswer {
    std::string time_zone; // empty: the computer's own
    std::string today;
    std::string words;
};
BOOST_DESCRIBE_STRUCT(ChangeTimeZoneAnswer, (), (time_zone, today, words))

Result<ChangeTimeZoneAnswer> change_time_zone(Workplace&, const ChangeTimeZoneRequest&);

} // namespace amentum
