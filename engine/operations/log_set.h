// log_set: keep one set as it was done. Answers only when it is durable; the same key twice is the same set.
//
// A set with repetitions and what was left in reserve (or a ball's speed) is also a measurement, less certain than a
// test: it moves the trajectory of that lift's test, and the answer says by how much.
#pragma once

#include "operations/athlete_record.h"

namespace amentum {

struct LogSetRequest {
    std::string key; // made on the device: 8 to 64 letters, digits or '-'
    std::string athlete;
    std::string date;
    std::string exercise;
    int set_number;
    std::optional<double> load_kg;
    std::optional<double> load_lb;
    std::optional<int> reps;
    std::optional<double> reps_in_reserve;
    std::optional<double> speed_ms;
    std::optional<double> speed_mph;
    std::optional<std::string> block;
    std::optional<std::string> note;
};
BOOST_DESCRIBE_STRUCT(LogSetRequest, (),
                      (key, athlete, date, exercise, set_number, load_kg, load_lb, reps, reps_in_reserve,
                       speed_ms, speed_mph, block, note))

struct LogSetAnswer {
    std::string key;
    bool held_before;                    // the same key was already kept
    std::optional<ShownEstimate> before; // the quality's estimate without and with this set
    std::optional<ShownEstimate> after;
    std::string words;
    std::vector<ShownFinding> findings; // of the guard rails on this set: done in spite of an open pain entry
};
BOOST_DESCRIBE_STRUCT(LogSetAnswer, (), (key, held_before, before, after, words, findings))

Result<LogSetAnswer> log_set(Workplace&, const LogSetRequest&);

} // namespace amentum
