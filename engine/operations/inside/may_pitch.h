// May this arm pitch on a day? The word of pain and of every table, in that order, with the arithmetic.
//
//   no           an open pain entry that stops throwing; a clinician's plan whose steps are not through; a limit that leaves none
//   yes          every table leaves at least one pitch: the least of them
//   cannot_tell  no table covers the sport, or none the age
// Days of nobody's word count as days without pitches, and the words say how many there are since the longest rest ago.
#pragma once

#include "operations/check_arm.h"
#include "operations/inside/arm_case.h"

namespace amentum {

struct MayPitch {
    std::string word; // yes, no, cannot_tell
    std::string short_answer;
    std::optional<int> most;
    std::optional<Date> next_day;
    std::vector<ShownLimit> limits; // the one that binds first
    std::string may_catch;
};

MayPitch may_pitch(const ArmCase& arm, const ReferenceTables& tables, Date day, Date today,
                   const std::optional<std::string>& organisation = {});

// "at most 95 pitches", "none; next on 2026-06-03", "cannot tell": what an entry may change.
std::string may_pitch_in_short(const MayPitch&);

std::vector<std::string> team_words(const ArmCase&, Date day);

} // namespace amentum
