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

PutOnBetween::PutOnBetween(const ChoicesOfSets& choices) : tables_(1), before_{0} {
    for (std::size_t set = 1; set < choices.size(); ++set) {
        const auto &from = choices[set - 1], &to = choices[set];
        auto& table = tables_.emplace_back();
        table.reserve(from.size() * to.size());
        for (const auto& choice : to)
            for (const auto& before : from)
                table.push_back(static_cast<std::uint8_t>(choice.plates.without(before.plates)));
        before_.push_back(from.size());
    }
}

std::vector<std::vector<int>> least_put_on(const ChoicesOfSets& choices, const PutOnBetween& between) {
    const std::size_t sets = choices.size();
    std::vector<std::vector<int>> least(sets, std::vector<int>(sets, 0));
    for (std::size_t from = 0; from < sets; ++from) {
        Needs needs = counts_of(choices[from]);
        for (std::size_t to = from;; ++to) {
            least[from][to] = *std::min_element(needs.begin(), needs.end());
            if (to + 1 == sets)
                break;
            Needs next(choices[to + 1].size(), none);
            for (std::size_t b = 0; b < next.size(); ++b) {
                const std::uint8_t* put_on = between.onto(to + 1, b);
                for (std::size_t a = 0; a < needs.size(); ++a)
                    next[b] = std::min(next[b], needs[a] + put_on[a]);
            }
            needs = std::move(next);
        }
    }
    return least;
}

std::vector<std::vector<std::vector<int>>> least_put_on_after(const ChoicesOfSets& choices,
                                                              const PutOnBetween& between) {
    std::vector<std::vector<Needs>> after(choices.size());
    for (std::size_t to = 0; to < choices.size(); ++to) {
        after[to].resize(to + 1);
        after[to][to].assign(choices[to].size(), 0);
        for (std::size_t t = to; t > 0; --t) {
            Needs& before = after[to][t - 1];
            before.assign(choices[t - 1].size(), none);
            for (std::size_t b = 0; b < choices[t].size(); ++b) {
                const std::uint8_t* put_on = between.onto(t, b);
                for (std::size_t a = 0; a < before.size(); ++a)
                    before[a] = std::min(before[a], after[to][t][b] + put_on[a]);
            }
        }
    }
    return after;
}

} // namespace amentum
