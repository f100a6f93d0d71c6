// The fewest plates handled on one sleeve, by brute force over every ordered stack of every multiset: shares no
// code with the engine.
//
// Masses are whole numbers. Set after set, the cheapest way to each ordered stack b is the minimum over every
// stack a before it of way(a) + |a| + |b| - 2 x (common inner part). Instead of all pairs (a, b), each inner
// part p keeps the cheapest way(a) + |a| of the stacks that begin with it; a p shorter than the common part
// only costs more, so the minimum over the inner parts of b is the same number.
#pragma once

#include <algorithm>
#include <cstdint>
#include <map>
#include <optional>
#include <utility>
#include <vector>

namespace amentum {

using Units = std::int64_t;
using Stack = std::vector<Units>;                 // innermost first
using Handled = std::pair<int, Units>;            // plates handled, and their mass
using Pairs = std::vector<std::pair<Units, int>>; // mass of a plate, how many may stand on the sleeve

inline void every_multiset(const Pairs& pairs, std::size_t from, Units rest, Stack& taken,
                           std::vector<Stack>& all) {
    if (rest == 0) {
        all.push_back(taken);
        return;
    }
    if (from == pairs.size() || rest < 0)
        return;
    const std::size_t height = taken.size();
    for (int count = 0; count <= pairs[from].second; ++count) {
        every_multiset(pairs, from + 1, rest - count * pairs[from].first, taken, all);
        taken.push_back(pairs[from].first);
    }
    taken.resize(height);
}

inline std::vector<Stack> every_stack(const Pairs& pairs, Units mass) {
    std::vector<Stack> multisets, stacks;
    Stack taken;
    every_multiset(pairs, 0, mass, taken, multisets);
    for (auto& stack : multisets) {
        std::sort(stack.begin(), stack.end());
        do
            stacks.push_back(stack);
        while (std::next_permutation(stack.begin(), stack.end()));
    }
    return stacks;
}

inline Units mass_of_stack(const Stack& stack) {
    Units sum = 0;
    for (const Units plate : stack)
        sum += plate;
    return sum;
}

// From the empty sleeve through all sets to the empty sleeve; none when a set cannot be made.
inline std::optional<Handled> fewest_handled(const Pairs& pairs, const std::vector<Units>& sides) {
    std::map<Stack, Handled> ways{{{}, {0, 0}}};
    std::vector<Units> with_end = sides;
    with_end.push_back(0);
    for (const Units side : with_end) {
        std::map<Stack, Handled> leaving; // inner part -> cheapest way to have taken off all of some stack
        for (const auto& [stack, way] : ways) {
            const Handled off{way.first + static_cast<int>(stack.size()), way.second + mass_of_stack(stack)};
            for (std::size_t n = 0; n <= stack.size(); ++n) {
                const auto [place, fresh] = leaving.try_emplace(Stack(stack.begin(), stack.begin() + n), off);
                if (!fresh)
                    place->second = std::min(place->second, off);
            }
        }
        std::map<Stack, Handled> next;
        for (const auto& stack : every_stack(pairs, side)) {
            std::optional<Handled> best;
            for (std::size_t n = 0; n <= stack.size(); ++n) {
                const Stack inner(stack.begin(), stack.begin() + n);
                const auto from = leaving.find(inner);
                if (from == leaving.end())
                    break;
                const Handled way{from->second.first + static_cast<int>(stack.size()) -
                                      2 * static_cast<int>(n),
                                  from->second.second + mass_of_stack(stack) - 2 * mass_of_stack(inner)};
                best = best ? std::min(*best, way) : way;
            }
            next.emplace(stack, *best);
        }
        if (next.empty())
            return std::nullopt;
        ways = std::move(next);
    }
    return ways.at({});
}

} // namespace amentum
