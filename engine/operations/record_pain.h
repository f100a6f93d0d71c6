// record_pain: somebody hurts: where, since when, in the thrower's own words. It stops what loads that region.
//
// From then on nothing is prescribed for that region, and no throws when it is the arm, the neck or the back, until a
// named adult records who cleared it (record_clearance). The entry can be neither changed nor deleted. It is no diagnosis.
// The same day, region, words and name again are the entry that is held already while it is open: a device may send
// twice. After a clearance they are pain that came back, and a new entry.
// Refuses an unknown region or sign, a day after today, empty words, and nobody's name.
#pragma once

#include "operations/check_arm.h"

namespace amentum {

struct RecordPainRequest {
    std::string athlete;
    std::string region;              // shoulder, elbow, forearm_and_hand, neck_and_upper_back, low_back ...
    std::optional<std::string> date; // when it was felt; left out: today
    std::optional<std::string> sign; // key of a sign of stop_and_refer, when it is one
    std::string words;               // as the thrower says it
    std::string noted_by;            // who writes it down
};
BOOST_DESCRIBE_STRUCT(RecordPainRequest, (), (athlete, region, date, sign, words, noted_by))

struct RecordPainAnswer {
    bool held_before;
    ShownPain pain;
    std::vector<std::string> words; // what it stops, and what to do now
    std::vector<std::string> stop_and_refer;
};
BOOST_DESCRIBE_STRUCT(RecordPainAnswer, (), (held_before, pain, words, stop_and_refer))

Result<RecordPainAnswer> record_pain(Workplace&, const RecordPainRequest&);

} // namespace amentum
