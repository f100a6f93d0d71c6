#include "throwing_workload/pitch_allowance.h"

#include <algorithm>

namespace amentum {
namespace {

bool loads_a_pitcher(const ThrowEntry& entry) {
    return (entry.setting == ThrowSetting::game && entry.count > 0) || entry.outs.value_or(0) > 0 ||
           entry.outs_caught.value_or(0) > 0;
}

std::vector<const ThrowEntry*> in_order(std::span<const ThrowEntry> entries) {
    std::vector<const ThrowEntry*> ordered;
    ordered.reserve(entries.size());
    for (const auto& entry : entries)
        if (loads_a_pitcher(entry))
            ordered.push_back(&entry);
    std::stable_sort(ordered.begin(), ordered.end(), [](const ThrowEntry* a, const ThrowEntry* b) {
        return std::pair(a->date, a->occasion) < std::pair(b->date, b->occasion);
    });
    return ordered;
}

void add_game(const ThrowEntry& entry, std::vector<GameOfDay>& games) {
    GameOfDay game{entry.game, entry.count, entry.before_last_batter};
    const auto same =
        std::find_if(games.begin(), games.end(), [&](const GameOfDay& g) { return g.name == entry.game; });
    if (!entry.game.empty() && same != games.end()) { // the same game goes on: in the later one's place
        if (game.before_last_batter)
            *game.before_last_batter += same->pitches;
        game.pitches += same->pitches;
        games.erase(same);
    }
    games.push_back(std::move(game));
}

} // namespace

std::vector<PitchingDay> pitching_days(std::span<const ThrowEntry> entries) {
    std::vector<PitchingDay> days;
    for (const ThrowEntry* entry : in_order(entries)) {
        if (days.empty() || days.back().date != entry->date)
            days.push_back({entry->date, {}, 0, 0, 0});
        auto& day = days.back();
        if (entry->setting == ThrowSetting::game && entry->count > 0) {
            day.pitches += entry->count;
            add_game(*entry, day.games);
        }
        day.outs += entry->outs.value_or(0);
        day.outs_caught += entry->outs_caught.value_or(0);
    }
    return days;
}

} // namespace amentum
