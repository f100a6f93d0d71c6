// The rules behind check_planned_throwing.
#pragma once

#include "guard_rails/check_planned_throwing.h"
#include "guard_rails/inside/throw_rules.h"

namespace amentum {

struct GameByTables {
    int most; // pitches every table allows, at most those planned
    std::vector<Finding> findings;
};

// `days`: thrown, and planned before this game.
GameByTables check_game_ahead(const ThrowingCase& arm, const std::vector<PitchingDay>& days,
                              const GameAhead& game);

// Steps back to throwing that are not through stand before any game on a day.
std::vector<Finding> steps_before_games(const ThrowingCase& arm, std::span<const StepsAhead> steps, Date day);

std::vector<Finding> check_steps_ahead(const ThrowingCase& arm, const StepsAhead& ahead,
                                       std::span<const CalendarEntry> calendar);

} // namespace amentum
