// record_clearance: a clinician has cleared a pain entry: who, when, with which limits, entered by a named adult.
//
// The tool clears nobody: it keeps what a named person decided, and whose hand entered it. It cannot be changed or deleted.
// Pain that comes back is a new entry.
// Refuses a number that is not an open pain entry of the thrower, a day before the pain or after today, and nameless people;
// the clinician cannot be the thrower.
#pragma once

#include "operations/check_arm.h"

namespace amentum {

struct RecordClearanceRequest {
    std::string athlete;
    int number;                       // of the pain entry
    std::string cleared_by;           // the clinician, by name and trade
    std::optional<std::string> date;  // of the clearance; left out: today
    std::string recorded_by;          // the adult who enters it
    std::optional<std::string> words; // limits and conditions, as they were said
};
BOOST_DESCRIBE_STRUCT(RecordClearanceRequest, (), (athlete, number, cleared_by, date, recorded_by, words))

struct RecordClearanceAnswer {
    ShownPain pain;
    std::vector<std::string> words;
};
BOOST_DESCRIBE_STRUCT(RecordClearanceAnswer, (), (pain, words))

Result<RecordClearanceAnswer> record_clearance(Workplace&, const RecordClearanceRequest&);

} // namespace amentum
