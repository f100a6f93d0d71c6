// record_practice: the throws of a whole group after practice, in one go: one setting, one count, and who differed.
//
// What stands above holds for everybody; a line may say otherwise. Throwers without throws that day are written down as
// such (setting none): a day of nobody's word is unknown, not zero. All of it is kept or nothing.
// Refuses what record_throws refuses, naming the line; a thrower twice; and, like it, other numbers where some are held.
#pragma once

#include "operations/record_throws.h"

namespace amentum {

struct PracticeLine {
    std::string athlete;
    std::optional<std::string> setting; // left out: the practice's
    std::optional<int> count;           // left out: the practice's; 0: none
    std::optional<double> effort_percent;
    std::optional<double> speed_mph; // mean of those measured
    std::optional<double> soreness_before;
    std::optional<double> soreness_after;
    std::optional<std::string> note;
};
BOOST_DESCRIBE_STRUCT(PracticeLine, (),
                      (athlete, setting, count, effort_percent, speed_mph, soreness_before, soreness_after,
                       note))

struct RecordPracticeRequest {
    std::optional<std::string> date; // left out: today
    std::string setting;
    int count;
    std::optional<double> effort_percent;
    std::optional<double> distance_ft;
    std::optional<double> distance_m;
    std::optional<double> ball_mass_lb;
    std::optional<double> ball_mass_kg;
    std::optional<std::string> team;
    std::optional<std::string> device;
    std::vector<PracticeLine> lines;
};
BOOST_DESCRIBE_STRUCT(RecordPracticeRequest, (),
                      (date, setting, count, effort_percent, distance_ft, distance_m, ball_mass_lb,
                       ball_mass_kg, team, device, lines))

struct PracticeThrower {
    std::string athlete;
    std::string name;
    std::string words;              // "40 throws, kept"; "already kept"
    std::vector<std::string> stops; // sentences of findings that stop
};
BOOST_DESCRIBE_STRUCT(PracticeThrower, (), (athlete, name, words, stops))

struct RecordPracticeAnswer {
    int kept;
    int held_before;
    std::vector<PracticeThrower> lines;
    std::vector<std::string> words;
    std::vector<std::string> stop_and_refer;
};
BOOST_DESCRIBE_STRUCT(RecordPracticeAnswer, (), (kept, held_before, lines, words, stop_and_refer))

Result<RecordPracticeAnswer> record_practice(Workplace&, const RecordPracticeRequest&);

} // namespace amentum
