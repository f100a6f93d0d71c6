// join_team: for whom a thrower plays, and by whose rules; several teams at once, one arm.
//
// Given again with a last day, the place ends. All pitches of all teams add up, and the strictest organisation holds.
// Refuses an organisation without a table for the thrower's sport, and a last day before the first.
#pragma once

#include "operations/workplace.h"
#include "values/refusal.h"

#include <boost/describe/class.hpp>

#include <optional>
#include <string>
#include <vector>

namespace amentum {

struct JoinTeamRequest {
    std::string athlete;
    std::string team;
    std::optional<std::string> organisation; // of a pitch table; left out: none the tool knows
    std::optional<std::string> date;         // the first day; left out: today
    std::optional<std::string> last_date;
};
BOOST_DESCRIBE_STRUCT(JoinTeamRequest, (), (athlete, team, organisation, date, last_date))

struct JoinTeamAnswer {
    std::vector<std::string> teams; // of this thrower, as they stand
    std::string words;
};
BOOST_DESCRIBE_STRUCT(JoinTeamAnswer, (), (teams, words))

Result<JoinTeamAnswer> join_team(Workplace&, const JoinTeamRequest&);

} // namespace amentum
