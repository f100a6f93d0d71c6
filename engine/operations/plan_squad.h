// plan_squad: a block for every thrower at once, overnight, on every core: begun, looked at, stopped.
//
// Each thrower is planned as plan_block does it, alone: one who cannot be planned gets a sentence and stops nobody else, and
// the blocks are the same whatever the threads and the order. A block is kept as soon as it is planned; stopping keeps those
// and discards what is half done. A kept block of the same start is replaced, except when sets of it are logged: it is left
// as it is. Where the coach changed it by hand, those words hold on, and the rest is planned around them, as little changed
// as can be. One squad at a time.
// Refuses (step begin): numbers out of range, an unknown thrower, nobody to plan for, and a second squad while one runs.
#pragma once

#include "operations/workplace.h"
#include "values/refusal.h"

#include <boost/describe/class.hpp>
#include <boost/describe/enum.hpp>

#include <optional>
#include <string>
#include <vector>

namespace amentum {

struct PlanSquadRequest {
    std::optional<std::string> step;      // begin, look, stop; left out: begin
    std::optional<std::string> start;     // left out: the next Monday
    std::optional<int> weeks;             // 4 to 16; left out: 4
    std::optional<int> sessions_per_week; // 1 to 5; left out: 3
    std::optional<double> minutes;        // a session, 20 to 120; left out: 60
    std::vector<std::string> athletes;    // empty: all
    std::optional<std::string> effort;    // brief (when left out), thorough
    std::optional<bool> wait;             // answer when it has ended; left out: yes; look never waits
};
BOOST_DESCRIBE_STRUCT(PlanSquadRequest, (),
                      (step, start, weeks, sessions_per_week, minutes, athletes, effort, wait))

struct PlannedThrower {
    std::string athlete;
    std::string name;
    std::string outcome; // planned, refused, left (as it is), waiting, stopped
    std::string block;   // its id; empty: none
    std::optional<double> points;
    std::string words; // why it is refused or left; what the coach's words did
};
BOOST_DESCRIBE_STRUCT(PlannedThrower, (), (athlete, name, outcome, block, points, words))

struct PlanSquadAnswer {
    std::string state; // none, running, done, stopped
    double share;      // of the throwers, 0 to 1
    std::string start;
    int weeks;
    int sessions_per_week;
    double minutes;
    int planned;
    int refused;
    int left;
    int waiting;                       // not begun, or stopped
    std::vector<PlannedThrower> lines; // by name
    std::string words;
};
BOOST_DESCRIBE_STRUCT(PlanSquadAnswer, (),
                      (state, share, start, weeks, sessions_per_week, minutes, planned, refused, left,
                       waiting, lines, words))

Result<PlanSquadAnswer> plan_squad(Workplace&, const PlanSquadRequest&);

} // namespace amentum
