// athlete_record: all that is known of one thrower: trajectories, limiters, changes, cautions, and when to stop.
#pragma once

#include "operations/find_limiters.h"
#include "operations/judge_change.h"

namespace amentum {

struct AthleteRecordRequest {
    std::string athlete;
};
BOOST_DESCRIBE_STRUCT(AthleteRecordRequest, (), (athlete))

struct ShownTrajectory {
    std::string quality;
    std::string quality_name;
    std::string test;
    std::string test_name;
    std::string unit;
    int decimals;
    std::vector<ShownTest> tests;
    std::vector<ShownPoint> curve; // 80 % band, at the test days, between them, and today
    std::optional<ShownEstimate> now;
    std::string change_words;   // from the first to the last test day; empty with one test
    std::string change_verdict; // gained, lost, cannot_tell, or empty
};
BOOST_DESCRIBE_STRUCT(ShownTrajectory, (),
                      (quality, quality_name, test, test_name, unit, decimals, tests, curve, now,
                       change_words, change_verdict))

struct ShownCaution {
    std::string restriction;
    std::string condition;
    std::string sentence;
};
BOOST_DESCRIBE_STRUCT(ShownCaution, (), (restriction, condition, sentence))

struct ShownFinding {
    std::string severity; // stops, warns, notes
    std::string sentence;
    std::string rule;
    std::string source;
    std::string what_to_do;
    int week; // 0 when it concerns the whole block or log
    int session;
    int order;
    std::string code;       // "rest_not_over": the same fault always has the same
    std::string may_answer; // coach, nobody: who may answer for a stop, with a reason (answer_stop)
    std::string answered;   // by whom and why; empty
};
BOOST_DESCRIBE_STRUCT(ShownFinding, (),
                      (severity, sentence, rule, source, what_to_do, week, session, order, code, may_answer,
                       answered))

struct AthleteRecordAnswer {
    std::string athlete;
    std::string name;
    std::string today;
    std::string birth_date;
    int age;
    std::string sport;
    std::string role;
    std::string level;
    std::string throwing_hand;
    std::string kit;
    std::string guardian;
    std::vector<ShownTrajectory> trajectories; // velocity first
    FindLimitersAnswer limiters;
    std::vector<ShownCaution> cautions;
    std::vector<ShownFinding> throwing; // findings on the throw log
    std::string throwing_words;         // days since the last hard throw, this week's throws
    std::vector<std::string> blocks;    // ids, newest first
    std::vector<std::string> stop_and_refer;
};
BOOST_DESCRIBE_STRUCT(AthleteRecordAnswer, (),
                      (athlete, name, today, birth_date, age, sport, role, level, throwing_hand, kit,
                       guardian, trajectories, limiters, cautions, throwing, throwing_words, blocks,
                       stop_and_refer))

Result<AthleteRecordAnswer> athlete_record(Workplace&, const AthleteRecordRequest&);

} // namespace amentum
