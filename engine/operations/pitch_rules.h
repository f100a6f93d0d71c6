// pitch_rules: the tables of limits on pitching in force here, with their sources, and who changed them.
//
// Tables that came with the program stand as they were published; one kept here (change_pitch_rules) takes the place of its
// organisation's rows and keeps them beside it.
#pragma once

#include "operations/workplace.h"
#include "values/refusal.h"

#include <boost/describe/class.hpp>

#include <optional>
#include <string>
#include <vector>

namespace amentum {

struct PitchRulesRequest {
    std::optional<std::string> organisation; // left out: all
};
BOOST_DESCRIBE_STRUCT(PitchRulesRequest, (), (organisation))

struct PitchRow {
    int age_low;
    int age_high;
    int daily_max;
    std::vector<int>
        rest_to; // highest count after which 0, 1, 2 ... days of rest are enough; empty: no bands
    std::optional<int> game_max;
    std::optional<int> third_day_max;
    std::optional<int> most_days_running;
    std::optional<int> yearly_innings;
    std::optional<std::string> second_game; // unsaid, never, after_no_rest_count
    std::optional<std::string> last_batter; // unsaid, past_daily_maximum, counts_as_reached
    std::optional<int> no_catching_from;
    std::optional<int> no_pitching_caught;
    std::optional<int> months_off;
    std::optional<int> months_off_running;
    std::optional<std::string> months_off_from; // pitching, throwing; left out: pitching
    std::optional<std::string> note;
};
BOOST_DESCRIBE_STRUCT(PitchRow, (),
                      (age_low, age_high, daily_max, rest_to, game_max, third_day_max, most_days_running,
                       yearly_innings, second_game, last_batter, no_catching_from, no_pitching_caught,
                       months_off, months_off_running, months_off_from, note))

struct PitchTableEdit {
    int number;
    std::string date;
    std::string author;
    std::string reason;
    bool published; // back to the table that came with the program
};
BOOST_DESCRIBE_STRUCT(PitchTableEdit, (), (number, date, author, reason, published))

struct ShownPitchTable {
    std::string organisation;
    std::string sport;
    int year;
    std::string age_on; // "MM-DD": age counts as of that day; empty: the birthday
    bool kept_here;     // not the published one
    std::string whose;
    std::vector<PitchRow> rows;
    std::vector<PitchRow> published; // beside a table kept here; empty: the same, or none was
    std::vector<std::string> sources;
    std::vector<PitchTableEdit> edits; // the first first
    int throwers;                      // whose teams play by it today
};
BOOST_DESCRIBE_STRUCT(ShownPitchTable, (),
                      (organisation, sport, year, age_on, kept_here, whose, rows, published, sources, edits,
                       throwers))

struct PitchRulesAnswer {
    std::vector<ShownPitchTable> tables;
    std::vector<std::string> words;
};
BOOST_DESCRIBE_STRUCT(PitchRulesAnswer, (), (tables, words))

Result<PitchRulesAnswer> pitch_rules(Workplace&, const PitchRulesRequest&);

} // namespace amentum
