// plan_block: write a block of 4 to 16 weeks for one thrower, in loads this gym can make, with a reason on each line.
//
// The block is kept in the store and checked by the guard rails, whose findings come with it. Planning again for the
// same athlete and start replaces the block as long as no set of it has been logged.
// Refuses: an unknown athlete or kit, numbers out of range, and (no_block_fits) limits that leave no block.
#pragma once

#include "operations/athlete_record.h"

namespace amentum {

struct PlanBlockRequest {
    std::string athlete;
    std::optional<std::string> start;       // left out: the next Monday
    std::optional<int> weeks;               // 4 to 16; left out: 4
    std::optional<int> sessions_per_week;   // 1 to 5; left out: 3
    std::optional<double> minutes;          // a session, 20 to 120; left out: 60
    std::optional<std::string> kit;         // left out: where the athlete trains
    std::vector<std::string> training_days; // "monday" ...; empty: any free day
    std::optional<std::string> effort;      // brief (when left out), thorough: polished by branch and bound
};
BOOST_DESCRIBE_STRUCT(PlanBlockRequest, (),
                      (athlete, start, weeks, sessions_per_week, minutes, kit, training_days, effort))

struct ShownLine {
    int order;
    std::string exercise;
    std::string name;
    std::string part;
    int sets;
    int reps;
    std::string dose;           // "4 x 5", with what is left in reserve
    std::optional<double> load; // in the facility's mass unit
    std::string load_unit;
    std::string load_words; // with the plates a side
    std::string intensity_words;
    double rest_minutes;
    std::string setup;
    std::string purpose; // the quality it serves, in words
    std::string reason;
    std::vector<std::string>
        cautions; // usual cautions that speak against it for this athlete, overridden or not
    int sets_logged;
    double minutes; // it takes, with its rests and set-up
    std::optional<double>
        dropping; // points lost without it in every week of its meso; null: the athlete is not planned for
    std::string held_back; // what holds back one more set
    std::string own_word;  // "held" or "" : the coach's own word on it
};
BOOST_DESCRIBE_STRUCT(ShownLine, (),
                      (order, exercise, name, part, sets, reps, dose, load, load_unit, load_words,
                       intensity_words, rest_minutes, setup, purpose, reason, cautions, sets_logged, minutes,
                       dropping, held_back, own_word))

// What the block gives one quality, by today's records. Shares are of the effect of ten hard sets a week, per cent.
struct ShownShare {
    std::string quality;
    std::string name;
    double weekly_sets;
    double share;
    double share_low; // of the published spread of the dose
    double share_high;
    double weight;     // of the quality in the points, per cent
    std::string words; // "goes with +0.8 mph (80 %: 0.1 to 1.6)"
};
BOOST_DESCRIBE_STRUCT(ShownShare, (),
                      (quality, name, weekly_sets, share, share_low, share_high, weight, words))

struct ShownReach {
    double points; // of 100: every quality at its full dose in every week
    std::optional<double>
        at_most_more; // points no plan within these limits can exceed it by; null: not worked out
    double worth;     // the parts of `points`
    double fatigue;
    double lines;
    double ready;
    std::vector<ShownShare> shares;  // heaviest first
    std::vector<std::string> broken; // limits of the plan this block does not keep
    std::string words;
};
BOOST_DESCRIBE_STRUCT(ShownReach, (),
                      (points, at_most_more, worth, fatigue, lines, ready, shares, broken, words))

struct ShownSession {
    int week;
    int session;
    std::string date;
    std::string weekday;
    std::string week_words; // "reduced volume"
    double minutes;
    std::vector<ShownLine> lines;
};
BOOST_DESCRIBE_STRUCT(ShownSession, (), (week, session, date, weekday, week_words, minutes, lines))

struct BlockAnswer {
    std::string block;
    std::string athlete;
    std::string name;
    std::string kit;
    std::string start;
    int weeks;
    int sessions_per_week;
    double minutes;
    std::vector<std::string> aims; // what the block is for, in words
    std::vector<ShownSession> sessions;
    std::vector<std::string> notes;
    std::vector<ShownFinding> findings; // of the guard rails
    std::vector<std::string> stop_and_refer;
    std::string model;
    std::optional<ShownReach> reach;    // null: nothing can be planned for this thrower today
    std::vector<std::string> own_words; // the coach's changes that hold, newest last
};
BOOST_DESCRIBE_STRUCT(BlockAnswer, (),
                      (block, athlete, name, kit, start, weeks, sessions_per_week, minutes, aims, sessions,
                       notes, findings, stop_and_refer, model, reach, own_words))

Result<BlockAnswer> plan_block(Workplace&, const PlanBlockRequest&);

} // namespace amentum
