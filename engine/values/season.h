// What happens around training: throws already made, and days already spoken for.
#pragma once

#include "values/calendar_date.h"
#include "values/enum_words.h"
#include "values/identifier.h"
#include "values/quantity.h"

#include <optional>
#include <string>

namespace amentum {

enum class ThrowSetting { catch_play, flat_ground, mound, bullpen, game, long_toss, ball_drill, javelin };
template <>
inline constexpr std::array<std::pair<ThrowSetting, std::string_view>, 8> words_of<ThrowSetting>{
    {{ThrowSetting::catch_play, "catch_play"},
     {ThrowSetting::flat_ground, "flat_ground"},
     {ThrowSetting::mound, "mound"},
     {ThrowSetting::bullpen, "bullpen"},
     {ThrowSetting::game, "game"},
     {ThrowSetting::long_toss, "long_toss"},
     {ThrowSetting::ball_drill, "ball_drill"},
     {ThrowSetting::javelin, "javelin"}}};

// Throws of one athlete, day and setting. Identified by those three.
struct ThrowEntry {
    AthleteId athlete;
    Date date;
    ThrowSetting setting;
    int count;                    // 1 to 400
    std::optional<double> effort; // intended, a fraction of full effort, 0.1 to 1
    std::optional<Speed> speed;   // mean of those measured
    std::optional<Length> distance;
    std::optional<Mass> ball_mass;
    std::optional<double> soreness_before; // 0 none to 10 worst imaginable
    std::optional<double> soreness_after;
    std::optional<double> soreness_next_day;
    std::string note;

    friend bool operator==(const ThrowEntry&, const ThrowEntry&) = default;
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
