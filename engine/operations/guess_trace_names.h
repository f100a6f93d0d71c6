// guess_trace_names: whose trace is each file, of which effort, day and trial? A guess for a person to confirm.
#pragma once

#include "operations/workplace.h"
#include "values/refusal.h"

#include <boost/describe/class.hpp>

#include <optional>
#include <string>
#include <vector>

namespace amentum {

struct GuessTraceNamesRequest {
    std::vector<std::string> names; // file names, with folders where there are some
};
BOOST_DESCRIBE_STRUCT(GuessTraceNamesRequest, (), (names))

struct TraceNameGuess {
    std::string file_name;
    std::string athlete; // id; empty when nobody fits
    std::string athlete_name;
    std::string effort; // empty when no word of the name tells it
    std::string legs;
    std::string date;  // empty when the name holds none
    int trial;         // 0 when the name holds none
    bool sure;         // athlete and effort each have one exact reading
    std::string words; // why, or what is missing
};
BOOST_DESCRIBE_STRUCT(TraceNameGuess, (),
                      (file_name, athlete, athlete_name, effort, legs, date, trial, sure, words))

struct GuessTraceNamesAnswer {
    std::vector<TraceNameGuess> guesses; // in the order of the names
};
BOOST_DESCRIBE_STRUCT(GuessTraceNamesAnswer, (), (guesses))

Result<GuessTraceNamesAnswer> guess_trace_names(Workplace&, const GuessTraceNamesRequest&);

} // namespace amentum
