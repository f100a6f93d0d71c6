// change_pitch_rules: play by another table: an organisation's new year, or a league's own, whole and checked on saving.
//
// Nothing is overwritten: each table is one more, numbered through the facility; the last of an organisation and sport holds.
// published = yes goes back to the one that came with the program.
// Refuses what throwing_workload/check_pitch_table.h refuses, naming row and column; nobody's name; a reason under 10
// characters; a table equal to the one in force.
// What it cannot tell: whether the league really plays by it.
#pragma once

#include "operations/pitch_rules.h"

namespace amentum {

struct ChangePitchRulesRequest {
    std::string organisation;
    std::string sport;
    std::optional<int> year;           // of the table; needed with rows
    std::optional<std::string> age_on; // "MM-DD"; left out: the birthday
    std::vector<PitchRow> rows;
    std::optional<bool> published;
    std::optional<std::string> source; // where the table was read
    std::string author;
    std::string reason;
};
BOOST_DESCRIBE_STRUCT(ChangePitchRulesRequest, (),
                      (organisation, sport, year, age_on, rows, published, source, author, reason))

struct ChangePitchRulesAnswer {
    ShownPitchTable table;
    std::vector<std::string> words; // with the throwers whose word of today changed
};
BOOST_DESCRIBE_STRUCT(ChangePitchRulesAnswer, (), (table, words))

Result<ChangePitchRulesAnswer> change_pitch_rules(Workplace&, const ChangePitchRulesRequest&);

} // namespace amentum
