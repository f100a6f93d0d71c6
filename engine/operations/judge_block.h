// judge_block: did the block do more than the records before it foretold, in velocity and in what it emphasised?
//
// For velocity and each quality with 15 % of the block's sets or more (proposal of this project): the forecast without the block
// by the roster's joint model from the readings up to its start, the test after it, and what lies between, with an 80 %
// interval; beside the same of throwers without a block over the same weeks when three or more were tested then (proposal).
// Which block: `block`, or from_date and to_date, or the athlete's last one that has begun. After: the first test from the
// block's last week to six weeks past its end; of a running block the last test from its third week on.
// Refuses: an unknown athlete or block, no block and no dates, dates the wrong way round, no test of velocity or of an
// emphasised quality before the start, none after the end, a roster without a joint fit.
// What it cannot tell: causes; getting used to a repeated test; the season, unless others were tested without a block.
#pragma once

#include "operations/shown.h"
#include "operations/workplace.h"
#include "values/refusal.h"

namespace amentum {

struct JudgeBlockRequest {
    std::string athlete;
    std::optional<std::string> block;     // its id; left out: the last one that has begun
    std::optional<std::string> from_date; // instead of a kept block: its first day
    std::optional<std::string> to_date;   // its last day
};
BOOST_DESCRIBE_STRUCT(JudgeBlockRequest, (), (athlete, block, from_date, to_date))

struct ResultOnDay {
    std::string date;
    double value; // its session's shift taken off
    bool judged;  // the one held against the forecast
};
BOOST_DESCRIBE_STRUCT(ResultOnDay, (), (date, value, judged))

struct BesideOthers { // throwers without a kept block, over the same weeks
    int athletes;
    ShownEstimate mean;   // of what their tests showed beyond their own forecasts
    ShownEstimate beside; // this athlete's less theirs
    std::string verdict;  // more, less, cannot_tell
};
BOOST_DESCRIBE_STRUCT(BesideOthers, (), (athletes, mean, beside, verdict))

struct JudgedQuality {
    std::string quality; // key
    std::string name;
    std::string test;
    std::string test_name;
    std::string unit;
    int decimals;
    std::string before_date; // last test up to the start
    double before;
    std::string after_date;
    double observed;        // session's shift taken off
    ShownEstimate forecast; // of such a test without the block
    ShownEstimate excess;   // observed less forecast
    double chance_more;     // that the excess is above 0
    std::string
        verdict; // more, less, cannot_tell: beside others when there are any, else beside the forecast
    std::optional<BesideOthers> others;
    std::optional<ShownEstimate> individual; // SD of individual responses; below 0: none to be seen
    std::vector<ShownPoint> band;            // forecast of such a test, from the start on
    std::vector<ResultOnDay> results;
    std::vector<std::string> words;
};
BOOST_DESCRIBE_STRUCT(JudgedQuality, (),
                      (quality, name, test, test_name, unit, decimals, before_date, before, after_date,
                       observed, forecast, excess, chance_more, verdict, others, individual, band, results,
                       words))

struct NotJudged {
    std::string name;
    std::string why;
};
BOOST_DESCRIBE_STRUCT(NotJudged, (), (name, why))

struct JudgeBlockAnswer {
    std::string athlete;
    std::string name;
    std::string block; // empty when dates were given
    std::string from_date;
    std::string to_date;
    bool finished;
    std::string verdict;                  // of velocity; of the first quality when velocity was not tested
    std::vector<JudgedQuality> qualities; // velocity first, then as emphasised
    std::vector<NotJudged> not_judged;
    std::vector<std::string> words;
    std::vector<std::string> not_taken_out;
    std::string model;
    std::vector<std::string> sources;
};
BOOST_DESCRIBE_STRUCT(JudgeBlockAnswer, (),
                      (athlete, name, block, from_date, to_date, finished, verdict, qualities, not_judged,
                       words, not_taken_out, model, sources))

Result<JudgeBlockAnswer> judge_block(Workplace&, const JudgeBlockRequest&);

} // namespace amentum
