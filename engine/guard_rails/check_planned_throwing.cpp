#include "guard_rails/check_planned_throwing.h"

#include "guard_rails/answered_stops.h"
#include "guard_rails/inside/planned_rules.h"

#include <algorithm>
#include <iterator>

namespace amentum {
namespace {

void append(std::vector<Finding>& all, std::vector<Finding> more) {
    std::move(more.begin(), more.end(), std::back_inserter(all));
}

bool stops(const std::vector<Finding>& findings) {
    return std::any_of(findings.begin(), findings.end(),
                       [](const Finding& f) { return f.severity == Severity::stops; });
}

void throw_as_planned(std::vector<PitchingDay>& days, const GameAhead& game, int pitches) {
    const auto at = std::lower_bound(days.begin(), days.end(), game.date,
                                     [](const PitchingDay& each, Date d) { return each.date < d; });
    auto day = at;
    if (at == days.end() || at->date != game.date)
        day = days.insert(at, {game.date, {}, 0, 0, 0});
    day->games.push_back({game.name, pitches, {}});
    day->pitches += pitches;
}

} // namespace

std::vector<Finding> check_planned_throwing(const ThrowingCase& arm, std::span<const GameAhead> games,
                                            std::span<const StepsAhead> steps,
                                            std::span<const CalendarEntry> calendar) {
    const auto answered = [&](std::vector<Finding> found) {
        return with_answers(std::move(found), arm.athlete.id, arm.care.stops_answered, arm.today);
    };
    std::vector<Finding> findings;
    std::vector<GameAhead> ahead(games.begin(), games.end());
    std::erase_if(ahead, [&](const GameAhead& game) { return game.date < arm.today; });
    std::stable_sort(ahead.begin(), ahead.end(),
                     [](const auto& a, const auto& b) { return a.date < b.date; });
    auto days = throw_log(arm).days;
    for (const auto& game : ahead) {
        auto other = pain_stops(arm, game.date);
        append(other, steps_before_games(arm, steps, game.date));
        other = answered(std::move(other));
        GameByTables by_tables = check_game_ahead(arm, days, game);
        by_tables.findings = answered(std::move(by_tables.findings));
        const bool in_full = !stops(by_tables.findings);
        if (!stops(other) && (in_full || by_tables.most > 0))
            throw_as_planned(days, game, in_full ? game.pitches : by_tables.most);
        append(findings, std::move(other));
        append(findings, std::move(by_tables.findings));
    }
    for (const auto& each : steps)
        append(findings, answered(check_steps_ahead(arm, each, calendar)));
    return findings;
}

} // namespace amentum
