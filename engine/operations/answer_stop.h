// answer_stop: a coach answers for a stop of the guard rails on one day, with a reason that is kept for good.
//
// The stop stays in every list, with who answered and why. Some stops nobody may answer: rest and limits of youth, an open
// pain entry, the signs to stop and refer.
// Refuses a code that is no stop of that thrower on that day, one that nobody may answer, no name, a reason under 10 letters.
#pragma once

#include "operations/athlete_record.h"

namespace amentum {

struct AnswerStopRequest {
    std::string athlete;
    std::string code;                // of the finding: "rest_not_over"
    std::optional<std::string> date; // the day it holds for; left out: today
    std::string coach;
    std::string reason;
};
BOOST_DESCRIBE_STRUCT(AnswerStopRequest, (), (athlete, code, date, coach, reason))

struct AnswerStopAnswer {
    std::string words;
    std::vector<ShownFinding> findings; // as they stand now
};
BOOST_DESCRIBE_STRUCT(AnswerStopAnswer, (), (words, findings))

Result<AnswerStopAnswer> answer_stop(Workplace&, const AnswerStopRequest&);

} // namespace amentum
