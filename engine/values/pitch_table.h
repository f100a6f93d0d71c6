// A table of limits on pitching, as an organisation publishes it or a league plays by it; and one kept here.
//
// A rule is one row: an organisation, year, sport and band of ages. rest_to[k] is the highest count after which k days of rest
// are enough. Empty: the table has no such entry. What the rows mean together: throwing_workload/pitch_allowance.h.
#pragma once

#include "values/athlete.h"
#include "values/calendar_date.h"

#include <array>
#include <optional>
#include <string>
#include <vector>

namespace amentum {

// May a pitcher pitch in a second game of one day?
enum class SecondGame { unsaid, never, after_no_rest_count };
template <>
inline constexpr std::array<std::pair<SecondGame, std::string_view>, 3> words_of<SecondGame>{
    {{SecondGame::unsaid, "unsaid"},
     {SecondGame::never, "never"},
     {SecondGame::after_no_rest_count, "after_no_rest_count"}}}; // if the first game's count asks no rest

// A limit is reached while a batter stands there: may the pitcher finish that batter, and what counts then?
enum class LastBatter { unsaid, past_daily_maximum, counts_as_reached };
template <>
inline constexpr std::array<std::pair<LastBatter, std::string_view>, 3> words_of<LastBatter>{
    {{LastBatter::unsaid, "unsaid"},
     {LastBatter::past_daily_maximum,
      "past_daily_maximum"}, // the maximum may be passed; the rest is by what was thrown
     {LastBatter::counts_as_reached,
      "counts_as_reached"}}}; // and the rest is by the band's end reached in that time at bat

// What the months off of a year are off from. Those in one piece are off from every throw.
enum class MonthsOffFrom { pitching, throwing };
template <>
inline constexpr std::array<std::pair<MonthsOffFrom, std::string_view>, 2> words_of<MonthsOffFrom>{
    {{MonthsOffFrom::pitching, "pitching"}, // in games
     {MonthsOffFrom::throwing, "throwing"}}};

struct PitchRule {
    std::string organisation; // "United States baseball guideline"
    int year;                 // of the table as it was read
    Sport sport;
    int age_low; // whole years, both included; for one organisation, year and sport the bands do not overlap
    int age_high;
    int daily_max; // pitches in one day, 1 to 400
    std::array<std::optional<int>, 6>
        rest_to;                          // ascending where given, without gaps; all empty: no rest bands
    std::optional<int> game_max;          // pitches in one game
    std::optional<int> third_day_max;     // pitches on the third day running; 0: none
    std::optional<int> most_days_running; // days in a row with pitches
    std::optional<int> yearly_innings;    // all teams together, in 12 months
    std::string note;
    std::vector<std::string> sources;
    std::optional<int> age_month =
        {}; // age counts as of this day in the calendar year of the game (1 to 12) ...
    std::optional<int> age_day = {}; // ... and its day; both empty: the birthday itself
    SecondGame second_game = SecondGame::unsaid;
    LastBatter last_batter = LastBatter::unsaid;
    std::optional<int> no_catching_from = {};   // so many pitches: no catching that day
    std::optional<int> no_pitching_caught = {}; // so many innings caught: no pitching that day
    std::optional<int> months_off = {};         // in 12 months
    std::optional<int> months_off_running = {}; // of these, in one piece
    MonthsOffFrom months_off_from = MonthsOffFrom::pitching;

    friend bool operator==(const PitchRule&, const PitchRule&) = default;
};

// A table kept here: it takes the place of every earlier row of its organisation and sport, whatever their year.
// Identified by its number, which runs through the facility: 1, 2, 3 ... Only ever added to.
struct PitchTable {
    int number;
    std::vector<PitchRule>
        rules; // of one organisation, year and sport; none: back to the table that came with the program
    std::string organisation;
    Sport sport;
    std::string author;
    Date date;
    std::string reason; // at least 10 letters

    friend bool operator==(const PitchTable&, const PitchTable&) = default;
};

// For whom an athlete plays, and by whose rules. Several teams, one arm: all their pitches add up, and the strictest rule
// holds. Identified by athlete, team and first day; entered again with `last_date` when it ends.
struct TeamPlace {
    AthleteId athlete;
    std::string team;
    std::string organisation; // of a pitch table; empty: none that the tool knows
    Date date;                // the first day
    std::optional<Date> last_date;

    friend bool operator==(const TeamPlace&, const TeamPlace&) = default;
};

} // namespace amentum
