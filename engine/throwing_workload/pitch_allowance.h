// May this arm pitch in a game on a day, how many, and when next? By one rule table, on what has been thrown.
//
// Everything is worked out for one day D from the days of pitching before it and on it, all teams together:
//   age          of the row that holds: on D itself, or as of the table's day in D's calendar year (age_month, age_day);
//                the rest a day of pitching asks for is by the row that held on that day, not on D
//   rest         D < next day allowed after any earlier day                                          -> 0
//   days running most_days_running days with pitches right before D                                  -> 0
//   third day    pitches on D - 1 and D - 2 (so on a fourth day too): at most third_day_max          (0: none)
//   second game  another game on D already: never, or only after a count that asks no rest           -> 0 otherwise
//   caught       no_pitching_caught innings caught on D or more                                      -> 0
//   innings      in the 12 months that end on D, yearly_innings or more recorded                     -> 0
//   day, game    daily_max less what was thrown on D; game_max less what was thrown in that game (a suspended game goes on
//                under its name, and its pitches add up over its days; rest and daily_max go by the day)
// The least of these is what is left. A batter at the plate when a limit is reached: LastBatter (pitch_table.h) says what the
// day counts as, pitches_for_rest(), and whether passing daily_max was a breach, breaks_daily_maximum(); both from memory of
// how leagues play, so a league's own words come first. Without before_last_batter the day counts as thrown.
// A day on which no row covered the age asks for no rest: the table has no word on it.
// 12 months: from the day after the same date a year before (29 February counts as 28 in common years) to D, both included.
// Units: pitches; days of the place where they were thrown. Range: days ascending, one a date. Refuses: a table without a row
// for the age (method_does_not_apply).
// What it cannot tell: pitches nobody wrote down; whether the arm is rested. Following a rule is no sign of health.
//
// Example: ages 13-14, 40 pitches on Monday: on Wednesday 0 left because of rest, next on Thursday, at most 95.
#pragma once

#include "throwing_workload/pitch_rule.h"
#include "values/season.h"

#include <span>
#include <string>
#include <vector>

namespace amentum {

// Entries of one day under one name are one game, in the place of the last of them; without a name each is a game of its own.
struct GameOfDay {
    std::string name;                      // empty: nobody named it
    int pitches;                           // of this arm, on this day
    std::optional<int> before_last_batter; // pitches of this game before the last batter's first
};

struct PitchingDay {
    Date date;
    std::vector<GameOfDay>
        games;   // in their order (occasion), in which this arm pitched; may be empty (a day of catching)
    int pitches; // of all games
    int outs;    // recorded while pitching
    int outs_caught;
};

// Days with pitches, innings pitched or innings caught; ascending. Entries of one athlete, in any order.
std::vector<PitchingDay> pitching_days(std::span<const ThrowEntry> entries);

enum class PitchLimit {
    rest,
    days_running,
    third_day,
    second_game,
    caught,
    innings,
    daily_maximum,
    game_maximum
};
template <>
inline constexpr std::array<std::pair<PitchLimit, std::string_view>, 8> words_of<PitchLimit>{
    {{PitchLimit::rest, "rest"},
     {PitchLimit::days_running, "days_running"},
     {PitchLimit::third_day, "third_day"},
     {PitchLimit::second_game, "second_game"},
     {PitchLimit::caught, "caught"},
     {PitchLimit::innings, "innings"},
     {PitchLimit::daily_maximum, "daily_maximum"},
     {PitchLimit::game_maximum, "game_maximum"}}};

// One table's word on one day. `rows` are of one organisation and sport.
struct PitchTableOfArm {
    std::span<const PitchRule> rows;
    Date birth_date;
};

struct LimitOfDay {
    PitchLimit limit;
    int most;                    // pitches it leaves on that day; 0: none
    std::optional<Date> because; // the earlier day it comes from; of days running: the first of them
    int counted;                 // what it was worked out from, as below
};
// counted   rest: pitches of that day, as counted for rest; days_running: days; second_game: pitches of the other games;
//           caught, innings: outs; third_day, daily_maximum: pitches thrown on the day; game_maximum: in that game

struct PitchAllowance {
    int most; // pitches left on the day: the least of `limits`
    std::vector<LimitOfDay>
        limits; // all that hold on the day, the least first; of days that owe rest the one whose rest
                // ends last
};

// The row that holds on a day, of several years the newest; null when none covers the age.
const PitchRule* rule_on(const PitchTableOfArm& table, Date day);
int age_by(const PitchRule& rule, Date birth_date, Date day);

// What a day counts as for rest, by the row that held on it. With counts_as_reached: the highest band's end T that was reached
// in the last batter's time at bat, before < T <= count, where before = the pitches of the games before + before_last_batter of
// the last game; without such a T, or otherwise, the count itself.
int pitches_for_rest(const PitchRule& rule, const PitchingDay& day);

// The smallest k with pitches <= rest_to[k]; above the last band that band's days, the least; 0 without bands.
int days_of_rest_after(const PitchRule& rule, int pitches);

// Above daily_max, unless the row lets the last batter be finished and that batter came up before the limit was reached.
bool breaks_daily_maximum(const PitchRule& rule, const PitchingDay& day);

// By no_catching_from. True when the table has no word on it.
bool may_catch(const PitchTableOfArm& table, std::span<const PitchingDay> days, Date day);

// `game`: the name of the game asked about, for game_max of a suspended one; empty: a new game.
Result<PitchAllowance> measure_allowance(const PitchTableOfArm& table, std::span<const PitchingDay> days,
                                         Date day, const std::string& game = "");

// The first day from `day` on with at least one pitch allowed in a new game when nothing else is thrown; none within 400 days:
// absent. Days whose age no row covers are passed over.
std::optional<Date> next_day_to_pitch(const PitchTableOfArm& table, std::span<const PitchingDay> days,
                                      Date day);

// The same in words, with the rule and the arithmetic: "2 days of rest after 40 pitches on 2026-03-09 (above 35, not above 50 at
// 13 to 14 years): 2026-03-10 to 2026-03-11."
// `limit` is one of measure_allowance(table, ..., day).
std::string describe_limit(const PitchTableOfArm& table, const LimitOfDay& limit, Date day);

} // namespace amentum
