// How much has this arm thrown, how hard, how lately? An account: counts and days, no verdict.
//
// Every day from the first entry to today stands in it, and each says what is known of it:
//   thrown    an entry of throws (or of innings caught, without a count: 0 counted, and not "none")
//   none      somebody wrote that nothing was thrown (setting `none`): a true zero
//   unknown   nobody's word. Not a zero: sums and averages that hold such a day are "at least".
// Hard throws (proposal of this project, no source): every throw of a game, bullpen, mound, long-toss or javelin entry; of
// other settings those at 0.9 or more of the thrower's own best speed in this log with the same ball, when their speed was
// read; without a speed, those meant at 0.9 or more of full effort. Radar comes before feel, because feel misleads:
//     meant at 75 %  ->  0.90 [Fiegen2023], about 0.89 on flat ground [Melugin2019] of full speed
//     meant at 50 %  ->  0.85 [Fiegen2023], about 0.78 [Melugin2019]
// `fielding` throws count as throws, not as pitches, and are not hard by their setting.
// Averages: exponentially weighted, N = 7 and 28 days (workload_averages.h) [Williams2017], unknown days taken as 0, so: at
// least. The first 28 days are marked as warming up: the start value still weighs 0.13 of the long average then.
// Own weeks: throws and hard throws of a week beside the least, the middle (median) and the most of the six calendar weeks
// before it, as far as they lie whole in the account and hold a known day; absolute numbers, no ratio.
// High day: at least as many throws as three in four of the thrower's own days with throws in the six weeks to today; told
// from eight such days on (both proposals of this project, no source).
// Units: throws; days. Range: entries of one athlete, in any order; those after `today` are left out.
// What it cannot tell: throws nobody wrote down (warm-up throws, other teams); whether the arm is rested; risk. An own best
// of a single easy day makes that day's throws hard; readings of two radars, up to 5.5 km/h apart for pocket ones
// [JSportsSci2021Radar], are not told apart.
//
// Example: a bullpen on 2026-03-02 seen from 2026-03-05: days_since_hard == 3, and three unknown days.
#pragma once

#include "values/facility.h"
#include "values/season.h"

#include <map>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace amentum {

enum class DayKnown { thrown, none, unknown };
template <>
inline constexpr std::array<std::pair<DayKnown, std::string_view>, 3> words_of<DayKnown>{
    {{DayKnown::thrown, "thrown"}, {DayKnown::none, "none"}, {DayKnown::unknown, "unknown"}}};

struct DaySoreness { // the worst noted in the entries of the day; absent: nobody said
    std::optional<double> before;
    std::optional<double> after;
    std::optional<double> next_day; // of the day after this one
};

struct DayOfThrows {
    Date date;
    int throws;
    int hard;
    double average_7; // of throws, exponentially weighted; unknown days as 0, so: at least
    double average_28;
    bool warming_up; // one of the first 28 days: the averages still lean on the start
    DayKnown known = DayKnown::unknown;
    DaySoreness soreness = {};
    std::array<int, words_of<ThrowSetting>.size()> by_setting = {}; // throws, in the order of the words

    int of(ThrowSetting setting) const { return by_setting[static_cast<std::size_t>(setting)]; }
};

struct LeastMiddleMost {
    int least;
    double middle; // median
    int most;
};

struct OwnWeeks { // the six calendar weeks before a week, as far as they can be compared
    int weeks = 0;
    int unknown_days = 0;                    // of theirs
    LeastMiddleMost throws{0, 0, 0};         // nothing when weeks == 0
    LeastMiddleMost hard_throws = {0, 0, 0}; // likewise
};

struct WeekOfThrows {
    Date monday; // the week of today may be unfinished
    int throws;
    int hard;
    int days_with_throws;
    int unknown_days = 0; // of its days in the account
    bool whole = false;   // all seven days stand in the account and are over
    OwnWeeks own = {};
};

struct ThrowAccount {
    std::vector<DayOfThrows> days; // ascending, without gaps, the last is today; empty without entries
    std::vector<WeekOfThrows> weeks;
    int last_7_days; // throws, today included; at least
    int the_7_before;
    std::optional<Date> last_hard;
    std::optional<ThrowSetting> last_hard_setting; // that with the most hard throws of that day
    std::optional<int> days_since_hard;            // 0: today
    int unknown_last_7 = 7;                        // days of nobody's word, today and those before the first
    int unknown_last_28 = 28;                      // entry included
    std::optional<int> high_from = {};             // throws that make a day high for this thrower
    std::optional<Date> last_high = {};
    std::optional<int> days_since_high = {};
};

ThrowAccount measure_throws(std::span<const ThrowEntry> entries, Date today);

// The best mean speed of the log, by ball: of entries whose ball mass is within 1 g of this one's, or as
// unrecorded.
std::optional<Speed> own_best(std::span<const ThrowEntry> entries, const std::optional<Mass>& ball_mass);

bool is_hard(const ThrowEntry& entry, const std::optional<Speed>& own_best);

// "34.1 mph, 0.91 of the own best 37.5: hard"; "meant at 0.70 of full effort, no speed read: not hard"; and why, when the
// setting alone makes it hard.
std::string describe_effort(const ThrowEntry& entry, const std::optional<Speed>& own_best,
                            SpeedUnit unit = SpeedUnit::mph);

// "At least 120 throws in the week of 2026-05-04, 40 of them hard (2 days unknown); 6 weeks before to compare with: throws 90 to
// 160, middle 125; hard 20 to 60, middle 40 (3 days unknown)." Absolute numbers of this thrower alone.
std::string describe_own_weeks(const WeekOfThrows& week);

// Pitches in games, by day: what pitch rules count.
std::map<Date, int> game_pitches(std::span<const ThrowEntry> entries);

} // namespace amentum
