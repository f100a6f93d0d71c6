// What was changed by hand in a kept block: the coach's own word, in order, until it is taken back.
//
// Identified by block and number: 1, 2, 3 ... Only ever added to; one that is taken back keeps its row with the day.
// `planned`: the block was planned anew from nothing, which ends the words before it; taking that back brings them back.
#pragma once

#include "values/calendar_date.h"
#include "values/enum_words.h"
#include "values/identifier.h"

#include <optional>
#include <string>
#include <vector>

namespace amentum {

enum class OwnStep { hold, leave_out, swap, planned };
template <>
inline constexpr std::array<std::pair<OwnStep, std::string_view>, 4> words_of<OwnStep>{
    {{OwnStep::hold, "hold"},
     {OwnStep::leave_out, "leave_out"},
     {OwnStep::swap, "swap"},
     {OwnStep::planned, "planned"}}};

struct BlockChange {
    BlockId block;
    int number; // 1 ...
    OwnStep step;
    std::string exercise;       // key; empty: planned
    std::string with;           // key of what takes its place; empty but for swap
    std::optional<int> session; // of the week, 1 ...; none: all
    std::vector<int> stood;     // in which sessions of the week the exercise stood then
    std::optional<int> sets;    // of a held line
    Date date;
    std::optional<Date> undone; // the day it was taken back

    friend bool operator==(const BlockChange&, const BlockChange&) = default;
};

} // namespace amentum
