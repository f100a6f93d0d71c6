#include "equipment/ramp_stacks.h"

#include "equipment/ramp_bound.h"
#include "equipment/ramp_programme.h"
#include "equipment/stack_choices.h"

#include <algorithm>
#include <cassert>

namespace amentum {
namespace {

constexpr std::size_t first_choices = 12;
constexpr int most_steps = 2'000'000;     // of the walk over all multisets of one mass
constexpr std::size_t most_choices = 600; // of one set, when every one that could do as well is tried

struct Plates {
    const std::vector<ExactMass>& each;
    const PlateCounts& most;
    int most_plates;
};

void append(std::vector<RampChoice>& all, const StackChoices& some, ExactMass mass, ExactMass lacking,
            std::size_t most) {
    for (std::size_t c = 0; c < std::min(most, some.all.size()); ++c)
        all.push_back({some.all[c], mass, lacking, some.all[c].plates()});
}

// The twelve with fewest plates; the number of plates grows by one, so that a kit with very many multisets is
// not walked in whole when a few plates do.
StackChoices fewest_plates(ExactMass mass, const Plates& plates) {
    const int limit = std::min(plates.most_plates, plates.most.plates());
    const int start = mass == 0 ? 0 : static_cast<int>((mass - 1) / plates.each.front() + 1);
    for (int n = start; n <= std::min(limit, start + 4); ++n) {
        StackChoices found = stack_choices(mass, plates.each, plates.most, n);
        if (found.all.size() >= first_choices || (!found.all.empty() && n >= found.all.front().plates() + 2))
            return found;
    }
    return stack_choices(mass, plates.each, plates.most, limit, most_steps);
}

std::vector<RampChoice> few_choices(const SideWanted& side, const Plates& plates) {
    std::vector<RampChoice> few;
    append(few, fewest_plates(side.mass, plates), side.mass, 0, first_choices);
    for (const ExactMass lighter : side.or_lighter)
        append(few, fewest_plates(lighter, plates), lighter, side.mass - lighter, first_choices);
    return few;
}

// Every multiset that a ramp of at most `bound` intervals could use; nothing when there are too many to try.
std::optional<ChoicesOfSets> all_choices(const std::vector<SideWanted>& sides, const Plates& plates,
                                         int bound) {
    ChoicesOfSets sets;
    for (const auto& side : sides) {
        const auto found =
            stack_choices(side.mass, plates.each, plates.most, std::min(bound, plates.most_plates));
        if (!found.complete || found.all.size() > 20 * most_choices)
            return std::nullopt;
        append(sets.emplace_back(), found, side.mass, 0, found.all.size());
    }
    drop_beyond(sets, bound);
    for (const auto& set : sets)
        if (set.size() > most_choices)
            return std::nullopt;
    return sets;
}

} // namespace

std::optional<RampStacks> solve_ramp_stacks(const std::vector<SideWanted>& sides,
                                            const std::vector<ExactMass>& each, const PlateCounts& most,
                                            int most_plates) {
    assert(!sides.empty() && sides.size() <= most_ramp_sets);
    const Plates plates{each, most, most_plates};
    ChoicesOfSets one, few;
    bool may_lack = false;
    for (const auto& side : sides) {
        few.push_back(few_choices(side, plates));
        if (few.back().empty())
            return std::nullopt;
        one.push_back({few.back().front()});
        may_lack |= !side.or_lighter.empty();
    }
    auto best = solve_ramp_programme(one, each).stacks;
    if (!may_lack)
        drop_beyond(few, best->cost.intervals);
    if (auto better = solve_ramp_programme(few, each, may_lack ? no_limit : best->cost.intervals).stacks)
        best = std::move(better);
    if (may_lack)
        return best;
    const int fewer = best->cost.intervals - 1;
    const auto all = all_choices(sides, plates, fewer);
    if (!all)
        return best;
    if (std::any_of(all->begin(), all->end(), [](const auto& set) { return set.empty(); })) {
        best->proven = true; // some set cannot be made at all within fewer
        return best;
    }
    const auto exact = solve_ramp_programme(*all, each, fewer);
    if (exact.stacks)
        best = exact.stacks;
    best->proven = exact.complete;
    return best;
}

} // namespace amentum
