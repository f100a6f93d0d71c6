#include "guard_rails/answered_stops.h"
#include "guard_rails/inside/planned_rules.h"

#include <algorithm>
#include <optional>

namespace amentum {
namespace {

std::string pitches(int count) {
    return std::to_string(count) + (count == 1 ? " pitch" : " pitches");
}

// Planned days are not always thrown: the words say so when the reason lies ahead.
std::string planned_reason(const LimitOfDay& limit, Date today) {
    return limit.because && *limit.because > today ? " This counts games planned before it as thrown." : "";
}

} // namespace

GameByTables check_game_ahead(const ThrowingCase& arm, const std::vector<PitchingDay>& days,
                              const GameAhead& game) {
    GameByTables found{game.pitches, {}};
    for (const auto& each : tables_of_arm(arm.tables, arm.teams, arm.athlete, game.date)) {
        const PitchTableOfArm table{each.rows, arm.athlete.birth_date};
        const auto* rule = rule_on(table, game.date);
        if (!rule)
            continue;
        const auto allowance = measure_allowance(table, days, game.date, game.name);
        found.most = std::min(found.most, allowance->most);
        for (const auto& limit : allowance->limits) {
            if (limit.most >= game.pitches)
                continue;
            const bool none = limit.most == 0;
            found.findings.push_back(
                {Severity::stops,
                 code_of(limit.limit, true),
                 "The game of " + game.date.text() + " is planned for " + pitches(game.pitches) + "; " +
                     (none ? "none is" : "at most " + std::to_string(limit.most) + " are") +
                     " left on that day." + planned_reason(limit, arm.today),
                 describe_limit(table, limit, game.date),
                 source_of(*rule),
                 none ? not_before(table, days, game.date) + " Plan another pitcher."
                      : "Plan at most " + pitches(limit.most) + ", and another pitcher after that.",
                 {},
                 game.date,
                 who_answers_for_rest(arm.athlete, game.date)});
        }
    }
    return found;
}

} // namespace amentum
