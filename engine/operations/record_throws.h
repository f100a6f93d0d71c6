// record_throws: keep the throws of one athlete, day, setting and occasion, with soreness, and say what the rules make of it.
//
// A day is the calendar day of the place where the throws were made; on travel `time_zone` says which day it is there now.
// `none` says that a day was without throws: such a day is zero, a day of nobody's word is unknown.
// Held numbers are changed only as a correction: with corrected_by and reason. The entry before is kept, and the answer says
// which answers changed (`reopened`), as it does for every entry of an earlier day.
// Refuses numbers outside their limits; a day after today; other numbers where some are held, without a correction; throws on
// a day known to be without, and the other way round.
#pragma once

#include "operations/athlete_record.h"

namespace amentum {

struct RecordThrowsRequest {
    std::string athlete;
    std::string date;
    std::string
        setting; // catch_play, flat_ground, mound, bullpen, game, long_toss, ball_drill, javelin, fielding, none
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
    std::optional<int> occasion; // the second bullpen or game of the day: 2; left out: 1
    std::optional<std::string> team;
    std::optional<std::string> game;           // its name; a suspended game keeps it
    std::optional<std::string> innings;        // pitched, as scorers write them: "4.1" is four and a third
    std::optional<int> before_last_batter;     // pitches before the last batter's first
    std::optional<std::string> innings_caught; // behind the plate
    std::optional<std::string> accuracy;
    std::optional<std::string> device;
    std::optional<std::string> time_zone; // of the place, on travel: "Asia/Tokyo"
    std::optional<std::string> corrected_by;
    std::optional<std::string> reason; // of the correction
};
BOOST_DESCRIBE_STRUCT(RecordThrowsRequest, (),
                      (athlete, date, setting, count, effort_percent, speed_mph, speed_ms, distance_ft,
                       distance_m, ball_mass_lb, ball_mass_kg, soreness_before, soreness_after,
                       soreness_next_day, note, occasion, team, game, innings, before_last_batter,
                       innings_caught, accuracy, device, time_zone, corrected_by, reason))

struct ReopenedAnswer { // an answer that this entry changed
    std::string date;   // the day asked about
    std::string before; // "at most 95 pitches"
    std::string now;    // "none: rest until 2026-06-03"
};
BOOST_DESCRIBE_STRUCT(ReopenedAnswer, (), (date, before, now))

struct RecordThrowsAnswer {
    bool held_before;
    bool corrected;
    std::vector<ReopenedAnswer>
        reopened; // days from the entry's to a fortnight from today, where the word changed
    std::vector<ShownFinding> findings;
    std::vector<std::string> words;
    std::vector<std::string> stop_and_refer;
};
BOOST_DESCRIBE_STRUCT(RecordThrowsAnswer, (),
                      (held_before, corrected, reopened, findings, words, stop_and_refer))

Result<RecordThrowsAnswer> record_throws(Workplace&, const RecordThrowsRequest&);

} // namespace amentum
