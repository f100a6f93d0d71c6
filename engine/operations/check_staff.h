// check_staff: who may pitch on a day: every thrower in a line, with the most, the next day, and why not.
//
// The same word as check_arm gives, without the ledger. Sorted: those who may, by how many; then who may not, by when next;
// then where it cannot be told. Fielders and javelin throwers stand last, with their days since a hard throw.
#pragma once

#include "operations/check_arm.h"

namespace amentum {

struct CheckStaffRequest {
    std::optional<std::string> date; // left out: today
    std::optional<std::string> team; // its throwers alone
};
BOOST_DESCRIBE_STRUCT(CheckStaffRequest, (), (date, team))

struct StaffLine {
    std::string athlete;
    std::string name;
    std::string sport;
    std::string role;
    int age;
    std::vector<std::string> teams;
    std::string may_pitch; // yes, no, cannot_tell
    std::optional<int> most;
    std::string next_day;
    std::string words; // one sentence: why
    std::optional<int> days_since_hard;
    int throws_7; // of the last seven days, at least
    int unknown_7;
    std::string last_outing;        // "40 pitches on 2026-05-29"; empty
    std::optional<double> soreness; // the latest noted, within a week
    std::vector<std::string> stops; // sentences of findings that stop, rules of pitching left out
    std::string planned;            // what the calendar says of that day; empty
};
BOOST_DESCRIBE_STRUCT(StaffLine, (),
                      (athlete, name, sport, role, age, teams, may_pitch, most, next_day, words,
                       days_since_hard, throws_7, unknown_7, last_outing, soreness, stops, planned))

struct CheckStaffAnswer {
    std::string facility;
    std::string today;
    std::string day;
    std::vector<std::string> teams; // all there are
    std::vector<StaffLine> lines;
    std::vector<std::string> words;
    std::vector<std::string> stop_and_refer;
};
BOOST_DESCRIBE_STRUCT(CheckStaffAnswer, (), (facility, today, day, teams, lines, words, stop_and_refer))

Result<CheckStaffAnswer> check_staff(Workplace&, const CheckStaffRequest&);

} // namespace amentum
