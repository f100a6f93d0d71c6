// How much has this arm thrown, how hard, how lately? An account: counts and days, no verdict.
//
// Every day from the first recorded throw to today stands in it; a day without a record counts as 0 throws.
// Hard throws (proposal of this project, no source): every throw of a game, bullpen, mound, long-toss or
// javelin entry; and entries of any setting with intended effort of 0.9 and more, or a mean speed of 0.9 and
// more of the athlete's own best in this log with the same ball. Speed comes before feel: throws meant at 50
// % of effort are still 78 to 86 % of full speed [Melugin2019] [Fiegen2023].
// Averages: exponentially weighted, N = 7 and 28 days (workload_averages.h) [Williams2017]; the first 28 days
// are marked as warming up, because the start value still weighs 0.13 of the long average then.
// Units: throws; days. Entries after `today` are left out. Range: entries of one athlete.
// What it cannot tell: throws nobody wrote down (warm-up throws, other teams); whether the arm is rested;
// risk.
//
// Example: a bullpen on 2026-03-02 seen from 2026-03-05: days_since_hard == 3.
#pragma once

#include "values/season.h"

#include <map>
#include <optional>
#include <span>
#include <vector>

namespace amentum {

struct DayOfThrows {
    Date date;
    int throws;
    int hard;
    double average_7; // of throws, exponentially weighted
    double average_28;
    bool warming_up; // one of the first 28 days: the averages still lean on the start
};

struct WeekOfThrows {
    Date monday; // the week of today may be unfinished
    int throws;
    int hard;
    int days_with_throws;
};

struct ThrowAccount {
    std::vector<DayOfThrows> days; // ascending, without gaps, the last is today; empty without throws
    std::vector<WeekOfThrows> weeks;
    int last_7_days; // throws, today included
    int the_7_before;
    std::optional<Date> last_hard;
    std::optional<ThrowSetting> last_hard_setting;
    std::optional<int> days_since_hard; // 0: today
};

ThrowAccount measure_throws(std::span<const ThrowEntry> entries, Date today);

// The best mean speed of the log, by ball: of entries whose ball mass is within 1 g of this one's, or as
// unrecorded.
std::optional<Speed> own_best(std::span<const ThrowEntry> entries, const std::optional<Mass>& ball_mass);

bool is_hard(const ThrowEntry& entry, const std::optional<Speed>& own_best);

// Pitches in games, by day: what pitch rules count.
std::map<Date, int> game_pitches(std::span<const ThrowEntry> entries);

} // namespace amentum
