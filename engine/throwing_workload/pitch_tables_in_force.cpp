#include "throwing_workload/pitch_tables_in_force.h"

#include <algorithm>

namespace amentum {
namespace {

// The last of each organisation and sport, by number.
std::vector<const PitchTable*> last_tables(std::span<const PitchTable> kept) {
    std::vector<const PitchTable*> last;
    for (const auto& table : kept) {
        const auto same = std::find_if(last.begin(), last.end(), [&](const PitchTable* other) {
            return other->organisation == table.organisation && other->sport == table.sport;
        });
        if (same == last.end())
            last.push_back(&table);
        else if (table.number > (*same)->number)
            *same = &table;
    }
    std::erase_if(last, [](const PitchTable* table) { return table->rules.empty(); });
    std::sort(last.begin(), last.end(),
              [](const PitchTable* a, const PitchTable* b) { return a->number < b->number; });
    return last;
}

} // namespace

std::vector<PitchRule> pitch_tables_in_force(std::span<const PitchRule> built_in,
                                             std::span<const PitchTable> kept) {
    auto waiting = last_tables(kept);
    const auto in_place = waiting; // of rows that came with the program, told by organisation and sport
    const auto is_of = [](const PitchRule& rule) {
        return [&rule](const PitchTable* table) {
            return table->organisation == rule.organisation && table->sport == rule.sport;
        };
    };
    std::vector<PitchRule> rules;
    const auto take = [&](const PitchTable* table) {
        rules.insert(rules.end(), table->rules.begin(), table->rules.end());
    };
    for (const auto& rule : built_in) {
        if (std::none_of(in_place.begin(), in_place.end(), is_of(rule))) {
            rules.push_back(rule);
            continue;
        }
        const auto table = std::find_if(waiting.begin(), waiting.end(), is_of(rule));
        if (table == waiting.end())
            continue; // its rows stand already
        take(*table);
        waiting.erase(table);
    }
    for (const PitchTable* table : waiting)
        take(table);
    return rules;
}

} // namespace amentum
