#include "equipment/to_add.h"

#include "equipment/load_words.h"
#include "equipment/solve_load.h"
#include "equipment/standard_masses.h"

#include <algorithm>

namespace amentum {
namespace {

constexpr double near_enough = 0.005; // of the target: proposal of this project, no source
constexpr std::size_t most_suggestions = 3;

bool loads_both_sides(LoadMeans means) {
    return means == LoadMeans::straight_bar || means == LoadMeans::hex_bar ||
           means == LoadMeans::safety_bar || means == LoadMeans::camber_bar;
}

ExactMass miss(const std::optional<MadeLoad>& not_above, Mass target) {
    return not_above ? exact_mass(target) - exact_mass(not_above->total) : exact_mass(target);
}

Kit with_pair(Kit kit, Mass each) {
    kit.items.push_back({.kind = ItemKind::plate,
                         .label = describe_mass(each, kit.unit) + " plate",
                         .count = 2,
                         .mass = each,
                         .height = {},
                         .ratio = {},
                         .step = {},
                         .most = {}});
    return kit;
}

} // namespace

Result<std::vector<Addition>> solve_to_add(const Kit& kit, LoadMeans means, Mass target,
                                           const std::optional<std::string>& item) {
    if (!loads_both_sides(means))
        return Refusal{RefusalCode::method_does_not_apply, "Only bars are loaded with pairs of plates.",
                       "means", word(means), "straight_bar, hex_bar, safety_bar or camber_bar"};
    const auto now = solve_load(kit, means, target, item);
    if (!now)
        return now.refusal();
    const ExactMass miss_now = miss(now->not_above, target);
    const auto enough = static_cast<ExactMass>(near_enough * static_cast<double>(exact_mass(target)));

    std::vector<Addition> additions;
    for (const Mass each : standard_masses(ItemKind::plate, kit.unit)) {
        const auto then = solve_load(with_pair(kit, each), means, target, item);
        if (!then)
            return then.refusal();
        const ExactMass miss_then = miss(then->not_above, target);
        const bool helps =
            miss_then < miss_now && (miss_then == 0 || (miss_now > enough && miss_then <= enough));
        if (helps)
            additions.push_back(
                {"a pair of " + describe_mass(each, kit.unit) + " plates", each, *then->not_above});
    }
    std::stable_sort(additions.begin(), additions.end(), [](const auto& a, const auto& b) {
        return exact_mass(a.would_make.total) > exact_mass(b.would_make.total);
    });
    if (additions.size() > most_suggestions)
        additions.erase(additions.begin() + most_suggestions, additions.end());
    return additions;
}

} // namespace amentum
