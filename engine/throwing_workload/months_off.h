// Has this arm had its months off in the 12 months to a day?
//
//   off pitching   a day somebody spoke of, without pitches in a game
//   off throwing   a day somebody spoke of, without any throw, and nothing caught behind the plate
//   unknown        a day of nobody's word: perhaps off, perhaps not
// A month is 30 days here (proposal of this project, no source). A row asks for months_off off pitching or off throwing
// (months_off_from), and for months_off_running of these in one piece, off throwing [UsaBaseballPitching]:
//   enough       known days >= 30 months_off;   the longest known run >= 30 months_off_running
//   too_short    not even if every unknown day had been off
//   cannot_tell  it hangs on days nobody spoke of
// 12 months: from the day after the same date a year before to the day, as in pitch_allowance.h. Units: days.
// Range: entries of one athlete, in any order; those outside the 12 months are left out. Refuses: nothing.
// What it cannot tell: throws on a day of which somebody told only a part; whether the arm is rested.
//
// Example: pitched all days but 130 known ones: 130 days off pitching, enough for 4 months (120 days).
#pragma once

#include "values/pitch_table.h"
#include "values/season.h"

#include <span>
#include <string>

namespace amentum {

struct DaysOff {
    int known = 0;
    int at_most = 0; // were the unknown days off as well
    int longest_known = 0;
    int longest_at_most = 0;

    friend bool operator==(const DaysOff&, const DaysOff&) = default;
};

struct TimeOff {
    Date first; // of the 12 months
    Date last;
    int unknown_days;
    DaysOff from_pitching;
    DaysOff from_throwing;
};

enum class TimeOffWord { not_asked, enough, too_short, cannot_tell };
template <>
inline constexpr std::array<std::pair<TimeOffWord, std::string_view>, 4> words_of<TimeOffWord>{
    {{TimeOffWord::not_asked, "not_asked"},
     {TimeOffWord::enough, "enough"},
     {TimeOffWord::too_short, "too_short"},
     {TimeOffWord::cannot_tell, "cannot_tell"}}};

struct MonthsOffAnswer {
    TimeOffWord altogether;
    TimeOffWord in_one_piece;
    std::string sentence;
};

// The day after the same date a year before; 29 February counts as 28 in common years.
Date first_of_12_months(Date day);

TimeOff measure_time_off(std::span<const ThrowEntry> entries, Date day);

// `rule` is the row that holds on the last of the 12 months.
MonthsOffAnswer check_months_off(const PitchRule& rule, const TimeOff& time_off);

} // namespace amentum
