#include "operations/pitch_rules.h"

#include "operations/inside/shown_pitch_tables.h"

#include <algorithm>

namespace amentum {

Result<PitchRulesAnswer> pitch_rules(Workplace& workplace, const PitchRulesRequest& request) {
    auto& inside = workplace.inside();
    const auto view = inside.view();
    PitchRulesAnswer answer{shown_pitch_tables(inside.tables, *view, inside.today()), {}};
    if (request.organisation) {
        std::vector<std::string> known;
        for (const auto& table : answer.tables)
            known.push_back(table.organisation);
        std::erase_if(answer.tables,
                      [&](const auto& each) { return each.organisation != *request.organisation; });
        if (answer.tables.empty())
            return refuse_unknown("organisation", *request.organisation, known);
    }
    answer.words = {
        "A league's own rule comes before any of these; pitches of all teams add up. Following a rule is "
        "no sign of health, and warm-up throws are in none of them."};
    return answer;
}

} // namespace amentum
