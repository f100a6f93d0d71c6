// record_throws: keep the throws of one athlete, day and setting, with soreness, and say what the rules make of it.
#pragma once

#include "operations/athlete_record.h"

namespace amentum {

struct RecordThrowsRequest {
    std::string athlete;
    std::string date;
    std::string setting; // catch_play, flat_ground, mound, bullpen, game, long_toss, ball_drill, javelin
    int count;
    std::optional<double> effort_percent;
    std::optional<double> speed_mph;
    std::optional<double> speed_ms;
    std::optional<double> distance_ft;
    std::optional<double> distance_m;
    std::optional<double> ball_mass_lb;
    std::optional<double> ball_mass_kg;
    std::optional<double> soreness_before;
    std::optional<double> soreness_after;
    std::optional<double> soreness_next_day;
    std::optional<std::string> note;
};
BOOST_DESCRIBE_STRUCT(RecordThrowsRequest, (),
                      (athlete, date, setting, count, effort_percent, speed_mph, speed_ms, distance_ft,
                       distance_m, ball_mass_lb, ball_mass_kg, soreness_before, soreness_after,
                       soreness_next_day, note))

struct RecordThrowsAnswer {
    bool held_before;
    std::vector<ShownFinding> findings;
    std::vector<std::string> words;
    std::vector<std::string> stop_and_refer;
};
BOOST_DESCRIBE_STRUCT(RecordThrowsAnswer, (), (held_before, findings, words, stop_and_refer))

Result<RecordThrowsAnswer> record_throws(Workplace&, const RecordThrowsRequest&);

} // namespace amentum
