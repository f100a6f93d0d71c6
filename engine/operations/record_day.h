// record_day: a day, or a run of days, that is spoken for: a game, a start, practice, travel, days off.
//
// Blocks are planned around these days, and check_arm says what each game does to the days beside it.
// Refuses a last day before the first, more than 400 days, and a kind that is not one of these.
#pragma once

#include "operations/workplace.h"
#include "values/refusal.h"

#include <boost/describe/class.hpp>

#include <optional>
#include <string>
#include <vector>

namespace amentum {

struct RecordDayRequest {
    std::string kind; // game, start, practice, travel, off
    std::string date;
    std::optional<std::string> last_date; // left out: the same day
    std::optional<std::string> note;
    std::vector<std::string> athletes; // whom it concerns: one or more
};
BOOST_DESCRIBE_STRUCT(RecordDayRequest, (), (kind, date, last_date, note, athletes))

struct RecordDayAnswer {
    int kept;
    int held_before;
    std::vector<std::string> words; // what a start does to the days around it, a thrower a line
};
BOOST_DESCRIBE_STRUCT(RecordDayAnswer, (), (kept, held_before, words))

Result<RecordDayAnswer> record_day(Workplace&, const RecordDayRequest&);

} // namespace amentum
