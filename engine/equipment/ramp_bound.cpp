#include "equipment/ramp_bound.h"

#include <algorithm>

namespace amentum {
namespace {

constexpr int none = no_limit;
using Needs = std::vector<int>; // of each choice of one set

Needs counts_of(const std::vector<RampChoice>& set) {
    Needs counts;
    for (const auto& choice : set)
        counts.push_back(choice.count);
    return counts;
}

// What each choice of `to` needs, when those of `from` need so much: plates of the one without the other.
Needs carried(const Needs& needs, const std::vector<RampChoice>& from, const std::vector<RampChoice>& to) {
    Needs next(to.size(), none);
    for (std::size_t b = 0; b < to.size(); ++b)
        for (std::size_t a = 0; a < from.size(); ++a)
            if (needs[a] < next[b])
                next[b] = std::min(next[b], needs[a] + to[b].plates.without(from[a].plates));
    return next;
}

// The same from the last set backwards: what the later sets need after each choice.
Needs carried_back(const Needs& needs, const std::vector<RampChoice>& from,
                   const std::vector<RampChoice>& to) {
    Needs before(from.size(), none);
    for (std::size_t a = 0; a < from.size(); ++a)
        for (std::size_t b = 0; b < to.size(); ++b)
            if (needs[b] < before[a])
                before[a] = std::min(before[a], needs[b] + to[b].plates.without(from[a].plates));
    return before;
}

} // namespace

void drop_beyond(ChoicesOfSets& choices, int limit) {
    const std::size_t sets = choices.size();
    std::vector<Needs> up_to(sets);
    up_to[0] = counts_of(choices[0]);
    for (std::size_t t = 1; t < sets; ++t)
        up_to[t] = carried(up_to[t - 1], choices[t - 1], choices[t]);
    Needs after(choices.back().size(), 0);
    for (std::size_t t = sets; t-- > 0;) {
        const Needs before = t > 0 ? carried_back(after, choices[t - 1], choices[t])
                                   : Needs{}; // of all choices, dropped or not
        std::vector<RampChoice> kept;
        for (std::size_t c = 0; c < choices[t].size(); ++c)
            if (up_to[t][c] + after[c] <= limit)
                kept.push_back(choices[t][c]);
        choices[t] = std::move(kept);
        after = before;
    }
}

std::vector<std::vector<int>> least_put_on(const ChoicesOfSets& choices) {
    const std::size_t sets = choices.size();
    std::vector<std::vector<int>> least(sets, std::vector<int>(sets, 0));
    for (std::size_t from = 0; from < sets; ++from) {
        Needs needs = counts_of(choices[from]);
        for (std::size_t to = from;; ++to) {
            least[from][to] = *std::min_element(needs.begin(), needs.end());
            if (to + 1 == sets)
                break;
            needs = carried(needs, choices[to], choices[to + 1]);
        }
    }
    return least;
}

std::vector<std::vector<std::vector<int>>> least_put_on_after(const ChoicesOfSets& choices) {
    std::vector<std::vector<Needs>> after(choices.size());
    for (std::size_t to = 0; to < choices.size(); ++to) {
        after[to].resize(to + 1);
        after[to][to].assign(choices[to].size(), 0);
        for (std::size_t t = to; t > 0; --t)
            after[to][t - 1] = carried_back(after[to][t], choices[t - 1], choices[t]);
    }
    return after;
}

} // namespace amentum
