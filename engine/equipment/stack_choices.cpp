#include "equipment/stack_choices.h"

#include <algorithm>
#include <cassert>

namespace amentum {
namespace {

struct Walk {
    const std::vector<ExactMass>& each;
    const PlateCounts& most;
    int steps_left;
    StackChoices found = {};
    PlateCounts taken = {};

    void from(std::size_t kind, ExactMass rest, int plates_left) {
        if (rest == 0) {
            found.all.push_back(taken);
            return;
        }
        if (kind == each.size() || rest > each[kind] * plates_left)
            return;
        if (--steps_left < 0) {
            found.complete = false;
            return;
        }
        const auto possible = static_cast<int>(std::min<ExactMass>(rest / each[kind], plates_left));
        for (int count = std::min<int>(possible, most.of[kind]); count >= 0; --count) {
            taken.of[kind] = static_cast<std::uint8_t>(count);
            from(kind + 1, rest - count * each[kind], plates_left - count);
        }
        taken.of[kind] = 0;
    }
};

} // namespace

StackChoices stack_choices(ExactMass mass, const std::vector<ExactMass>& each, const PlateCounts& most,
                           int most_plates, int steps) {
    assert(mass >= 0 && each.size() <= PlateCounts::most_kinds);
    Walk walk{each, most, steps};
    walk.from(0, mass, std::min(most_plates, PlateCounts::most_of_a_kind));
    std::stable_sort(walk.found.all.begin(), walk.found.all.end(),
                     [](const auto& a, const auto& b) { return a.plates() < b.plates(); });
    return std::move(walk.found);
}

} // namespace amentum
