// check_arm: may this thrower pitch on a day, how many, when next, and what has this arm done lately?
//
// Asked of today when no day is given; of a day ahead it answers as if nothing more were thrown until then. Every
// organisation of the thrower's teams is asked, all pitches together; the strictest word holds.
// `may_pitch`: yes; no; cannot_tell, when no table covers the sport or the age. Days of nobody's word count as without pitches,
// and the answer says how many of the last six there are. An open pain entry that stops throwing comes before any table, and
// so does a clinician's plan that is not through.
// The ledger shows every day, known or unknown; averages are lines, not verdicts; no ratio of them is shown, and the answer
// says why.
// What it cannot tell: pitches nobody wrote down; whether the arm is rested. A yes is the rule's word, not a sign of health.
#pragma once

#include "operations/athlete_record.h"

namespace amentum {

struct CheckArmRequest {
    std::string athlete;
    std::optional<std::string> date;         // left out: today
    std::optional<std::string> organisation; // one table alone; left out: those of the thrower's teams
    std::optional<int> days;                 // of the ledger, 7 to 400; left out: 84
};
BOOST_DESCRIBE_STRUCT(CheckArmRequest, (), (athlete, date, organisation, days))

struct ShownPain {
    int number;
    std::string date;
    std::string region;
    std::string region_name;
    std::string sign; // sentence of the sign; empty
    std::string words;
    std::string noted_by;
    bool open;
    bool stops_throwing;
    std::string
        clearance; // "Cleared on 2026-05-04 by Dr. Ada Fenwick, entered by Kim Osei: ..."; empty while open
};
BOOST_DESCRIBE_STRUCT(ShownPain, (),
                      (number, date, region, region_name, sign, words, noted_by, open, stops_throwing,
                       clearance))

struct ShownLimit {
    std::string organisation;
    std::string
        limit; // rest, days_running, third_day, second_game, caught, innings, daily_maximum, game_maximum
    int most;
    std::string words; // the rule and the arithmetic
    std::string source;
};
BOOST_DESCRIBE_STRUCT(ShownLimit, (), (organisation, limit, most, words, source))

struct ArmDay { // one day of the ledger
    std::string date;
    std::string known; // thrown, none, unknown
    int throws;
    int hard;
    int pitches;                      // in games
    std::vector<std::string> entries; // "bullpen, 35 throws, 0.9 of full effort"
    std::optional<double> soreness;   // the worst of that day, 0 to 10
    double average_7;                 // throws a day; unknown days count as none, so: at least
    double average_28;
    bool warming_up;
    std::string planned; // start, game, practice, travel, off; empty
    bool pain;           // a pain entry is open on that day
};
BOOST_DESCRIBE_STRUCT(ArmDay, (),
                      (date, known, throws, hard, pitches, entries, soreness, average_7, average_28,
                       warming_up, planned, pain))

struct ArmWeek {
    std::string monday;
    int throws;
    int hard;
    int unknown_days;
    bool whole; // all seven days are over
};
BOOST_DESCRIBE_STRUCT(ArmWeek, (), (monday, throws, hard, unknown_days, whole))

struct PlannedOuting { // a game or start ahead
    std::string date;
    std::string kind;
    std::string note;
    std::optional<int>
        most; // allowed as things stand, earlier ones at what was usual; null: a game without a start
    std::optional<std::string> next_after_usual; // the next day allowed after the usual count
    std::string words;                           // what it does to the days around it
};
BOOST_DESCRIBE_STRUCT(PlannedOuting, (), (date, kind, note, most, next_after_usual, words))

struct RampStep {
    std::optional<std::string> date; // in answers; not read
    int throws;
    std::optional<double> distance_ft;
    std::optional<double> distance_m;
    std::optional<double> effort_percent;
    std::optional<std::string> words;
};
BOOST_DESCRIBE_STRUCT(RampStep, (), (date, throws, distance_ft, distance_m, effort_percent, words))

struct ArmSteps { // a ramp or a clinician's plan in force
    int number;
    std::string origin;
    std::string author;
    int step; // the one to do next, 1 ...; 0: through
    int steps;
    bool gate_open;
    std::string earliest; // the earliest day of the next step; empty
    std::string words;
    std::string start; // its first day
    int days_between;  // days without throwing between two steps
    std::string recorded_by;
    std::string note;
    std::vector<RampStep> list; // as written
};
BOOST_DESCRIBE_STRUCT(ArmSteps, (),
                      (number, origin, author, step, steps, gate_open, earliest, words, start, days_between,
                       recorded_by, note, list))

struct CheckArmAnswer {
    std::string athlete;
    std::string name;
    std::string today;
    std::string day; // asked about
    int age;         // on that day
    std::string sport;
    std::string role;
    std::vector<std::string> teams; // "Harbour Terns, by the Canada baseball rule"
    std::string may_pitch;          // yes, no, cannot_tell
    std::string short_answer; // "No: 2 days of rest after 40 pitches on 2026-03-09. Next on 2026-03-12."
    std::optional<int> most;  // pitches left on that day
    std::string
        next_day; // the first on which pitches are allowed; empty: none within 400 days, or cannot tell
    std::vector<ShownLimit> limits; // the one that binds first
    std::string may_catch;          // in words; empty: nothing is said
    std::vector<ShownPain> pains;   // open ones first
    std::vector<ArmSteps> steps;
    std::vector<ShownFinding> findings;
    std::vector<PlannedOuting> planned; // the next four weeks
    std::vector<ArmDay> ledger;         // ascending, to today
    std::vector<ArmWeek> weeks;         // ascending; the last may be unfinished
    std::vector<std::string>
        account; // this week against the own last six, days since a hard throw, unknown days
    std::vector<std::string> ranges; // range and strength watch
    std::vector<std::string> growth;
    std::string why_no_ratio;
    std::vector<std::string> stop_and_refer;
};
BOOST_DESCRIBE_STRUCT(CheckArmAnswer, (),
                      (athlete, name, today, day, age, sport, role, teams, may_pitch, short_answer, most,
                       next_day, limits, may_catch, pains, steps, findings, planned, ledger, weeks, account,
                       ranges, growth, why_no_ratio, stop_and_refer))

Result<CheckArmAnswer> check_arm(Workplace&, const CheckArmRequest&);

} // namespace amentum
