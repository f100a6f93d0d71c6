// What happens around training: throws already made, and days already spoken for.
#pragma once

#include "values/calendar_date.h"
#include "values/enum_words.h"
#include "values/identifier.h"
#include "values/quantity.h"

#include <optional>
#include <string>

namespace amentum {

enum class ThrowSetting {
    catch_play,
    flat_ground,
    mound,
    bullpen,
    game,
    long_toss,
    ball_drill,
    javelin,
    fielding,
    none
};
template <>
inline constexpr std::array<std::pair<ThrowSetting, std::string_view>, 10> words_of<ThrowSetting>{
    {{ThrowSetting::catch_play, "catch_play"},
     {ThrowSetting::flat_ground, "flat_ground"},
     {ThrowSetting::mound, "mound"},
     {ThrowSetting::bullpen, "bullpen"},
     {ThrowSetting::game, "game"}, // pitches to batters: what pitch rules count
     {ThrowSetting::long_toss, "long_toss"},
     {ThrowSetting::ball_drill, "ball_drill"},
     {ThrowSetting::javelin, "javelin"},
     {ThrowSetting::fielding,
      "fielding"},                   // throws in a game that are not pitches: in the field, behind the plate
     {ThrowSetting::none, "none"}}}; // the day is known to be without throws; nothing else stands on it

// Throws of one athlete, day, setting and occasion. Identified by those four.
//
// A day is the calendar day of the place where the throws were made. A day of nobody's word is unknown, not zero.
// A double-header is two occasions of one day. A suspended game keeps its name (`game`) on the day it goes on.
struct ThrowEntry {
    AthleteId athlete;
    Date date;
    ThrowSetting setting;
    int count;                    // 1 to 400; 0: none, or a fielding entry of innings caught
    std::optional<double> effort; // intended, a fraction of full effort, 0.1 to 1
    std::optional<Speed> speed;   // mean of those measured
    std::optional<Length> distance;
    std::optional<Mass> ball_mass;
    std::optional<double> soreness_before; // 0 none to 10 worst imaginable
    std::optional<double> soreness_after;
    std::optional<double> soreness_next_day;
    std::string note;
    int occasion = 1;             // the first, second ... of that setting on that day, 1 to 9
    std::string team = {};        // for whom; empty: nobody said
    std::string game = {};        // its name; the same name on a later day: the suspended game goes on
    std::optional<int> outs = {}; // recorded while pitching: innings x 3, 0 to 60
    std::optional<int> before_last_batter = {}; // pitches thrown before the last batter's first, 0 to count
    std::optional<int> outs_caught = {};        // behind the plate: innings x 3, 0 to 60
    std::string accuracy = {};                  // how well they went where they should, in words
    std::string device = {};                    // that measured the speed

    friend bool operator==(const ThrowEntry&, const ThrowEntry&) = default;
};

// An entry that was not as it had been said. Identified by its number, which runs through the facility: 1, 2, 3 ... Only ever
// added to: what stood there before stays readable.
struct ThrowCorrection {
    int number;
    ThrowEntry before;
    std::optional<ThrowEntry> after; // of any day, setting and occasion; none: the entry was taken away
    Date recorded;
    std::string by;
    std::string reason; // at least 10 letters

    friend bool operator==(const ThrowCorrection&, const ThrowCorrection&) = default;
};

enum class DayKind { game, start, practice, travel, off };
template <>
inline constexpr std::array<std::pair<DayKind, std::string_view>, 5> words_of<DayKind>{
    {{DayKind::game, "game"},
     {DayKind::start, "start"}, // a game this athlete starts as pitcher (or a javelin competition)
     {DayKind::practice, "practice"},
     {DayKind::travel, "travel"},
     {DayKind::off, "off"}}}; // no training, no throwing

// A day, or an unbroken run of days. Identified by athlete, first day and kind.
struct CalendarEntry {
    AthleteId athlete;
    Date date;
    Date last_date; // the same day for a single day
    DayKind kind;
    std::string note;

    friend bool operator==(const CalendarEntry&, const CalendarEntry&) = default;
};

} // namespace amentum
